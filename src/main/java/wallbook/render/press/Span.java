package wallbook.render.press;

import wallbook.render.Fonts;
import wallbook.render.Tag;
import wallbook.render.Typeface;

/** A stretch of text of one look that belongs to one thing. */
final class Span {
  private final TypeStyle type;
  private final Typeface face;
  private final Tag tag;
  private final Link link;
  private final InlineBox box;

  /**
   * @param tag what the text belongs to
   * @param link the link that it is part of, or null
   * @param box the box that is drawn behind it, or null
   */
  Span(TypeStyle type, Tag tag, Link link, InlineBox box) {
    this.type = type;
    this.face = Fonts.typeface(type.face());
    this.tag = tag;
    this.link = link;
    this.box = box;
  }

  /** A box with a ground or a border behind part of a line. */
  record InlineBox(BoxStyle style, TypeStyle type) {}

  TypeStyle type() {
    return type;
  }

  Typeface face() {
    return face;
  }

  Tag tag() {
    return tag;
  }

  /** The link that it is part of, or null. */
  Link link() {
    return link;
  }

  /** The box that is drawn behind it, or null. */
  InlineBox box() {
    return box;
  }

  /** How far its line reaches above the base line. */
  float above() {
    return halfLeading() + Typeface.ASCENT * type.size() + type.raise();
  }

  /** How far its line reaches below the base line. */
  float below() {
    return halfLeading() + Typeface.DESCENT * type.size() - type.raise();
  }

  private float halfLeading() {
    return (type.leading() - Typeface.USUAL_LEADING * type.size()) / 2;
  }
}
