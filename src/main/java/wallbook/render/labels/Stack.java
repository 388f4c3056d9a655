package wallbook.render.labels;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.render.Face;
import wallbook.stock.LabelArea;
import wallbook.stock.Legibility;
import wallbook.stock.TypeSize;

/**
 * Sets a label and the parts beneath it into a rectangle, so that everything fits as measured:
 * comfortable sizes and the fullest forms first, then shorter forms, then smaller sizes, then
 * without what may be left out, then with the label broken into lines, at last with an ellipsis for
 * the rest of a text, never of the label; never smaller than is legible.
 */
final class Stack {
  private final Typesetter type;
  private final HouseSizes house;
  private final Map<Effort, List<Sizes>> pairs = new EnumMap<>(Effort.class);
  private final double numberPt;

  Stack(Typesetter type, Legibility legibility, HouseSizes house) {
    this.type = type;
    this.house = house;
    List<TypeSize> labels = legibility.sizes("identifier", type.capHeightEm(Face.BOLD));
    List<TypeSize> texts = legibility.sizes("text", type.capHeightEm(Face.REGULAR));
    for (Effort effort : Effort.values()) {
      pairs.put(
          effort,
          Sizes.pairs(
              effort.smallLabel ? labels : usual(labels), effort.smallText ? texts : usual(texts)));
    }
    this.numberPt = legibility.sizes("number", type.capHeightEm(Face.REGULAR)).get(0).pt();
  }

  /**
   * The lines of a label, in the middle of the height; empty if they don't fit.
   *
   * @param slot which block of the label it is
   * @param area where they may stand
   * @param centred whether lines stand in the middle, else at the left
   */
  Optional<List<TypeLine>> set(
      HouseSizes.Slot slot, String label, List<Part> parts, LabelArea area, boolean centred) {
    Block block = new Block(type, area, centred);
    String printable = type.printable(label);
    for (Effort effort : Effort.values()) {
      List<Sizes> allowed =
          pairs.get(effort).stream().filter(sizes -> sizes.within(house.limit(slot))).toList();
      for (List<Part> form : forms(parts, effort.texts)) {
        for (Sizes sizes : allowed) {
          List<String> lines =
              effort.broken
                  ? type.broken(printable, Face.BOLD, sizes.labelPt(), area.widthMm())
                  : List.of(printable);
          Optional<List<TypeLine>> set = block.set(lines, form, sizes);
          if (set.isPresent()) {
            house.take(slot, sizes);
            return set;
          }
        }
      }
    }
    return Optional.empty();
  }

  /** The number of a port at the origin. */
  TypeLine number(int port) {
    return type.line(Integer.toString(port), Face.REGULAR, numberPt);
  }

  /** What is given up to make things fit, in this order. */
  private enum Effort {
    NONE(false, false, Texts.WHOLE, false),
    SMALLER_LABEL(true, false, Texts.WHOLE, false),
    SMALLER_TEXT(true, true, Texts.WHOLE, false),
    LEAVE_OUT(true, true, Texts.NEEDED, false),
    BROKEN_LABEL(true, true, Texts.WHOLE, true),
    BROKEN_LABEL_LEAVE_OUT(true, true, Texts.NEEDED, true),
    SHORTEN(true, true, Texts.SHORTENED, false),
    BROKEN_LABEL_SHORTEN(true, true, Texts.SHORTENED, true);

    private final boolean smallLabel;
    private final boolean smallText;
    private final Texts texts;
    private final boolean broken;

    Effort(boolean smallLabel, boolean smallText, Texts texts, boolean broken) {
      this.smallLabel = smallLabel;
      this.smallText = smallText;
      this.texts = texts;
      this.broken = broken;
    }
  }

  /** How much of the text beneath a label is printed. */
  private enum Texts {
    WHOLE,
    /** Without what may be left out. */
    NEEDED,
    /** Of what is needed, as much as there is room for. */
    SHORTENED
  }

  private static List<TypeSize> usual(List<TypeSize> sizes) {
    return sizes.stream().filter(TypeSize::usual).toList();
  }

  /** The parts in each of their forms, the fullest first. */
  private static List<List<Part>> forms(List<Part> parts, Texts texts) {
    List<Part> kept =
        parts.stream()
            .filter(p -> texts == Texts.WHOLE || !p.optional())
            .map(p -> texts == Texts.SHORTENED && p instanceof Part.Text t ? t.shortened() : p)
            .toList();
    int most = kept.stream().mapToInt(Part::forms).max().orElse(1);
    List<List<Part>> forms = new ArrayList<>();
    for (int i = 0; i < most; i++) {
      int form = i;
      forms.add(
          kept.stream()
              .map(
                  p ->
                      p instanceof Part.Text t
                          ? new Part.Text(List.of(t.form(form)), t.bold(), t.optional())
                          : p)
              .toList());
    }
    return forms;
  }
}
