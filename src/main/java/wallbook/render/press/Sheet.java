package wallbook.render.press;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDPage;
import wallbook.render.Tag;

/**
 * A page on which is drawn. Lengths are in points from its upper left corner, y down. When it is
 * full its content is packed; only what the end of the document tells is kept open.
 */
final class Sheet {
  private static final String PAGINATION = "/Type/Pagination";
  private static final COSInteger PRINTED = COSInteger.get(4);

  private final Book book;
  private final PDPage page;
  private final Geometry geometry;
  private final int number;
  private final String name;
  private final COSArray marks = new COSArray();
  private final COSArray annotations = new COSArray();
  private final COSDictionary objects = new COSDictionary();
  private final List<Late> late = new ArrayList<>(0);
  private Tag present;
  private boolean artifact;
  private boolean repeats;

  /** Writes the end of a line whose page number wasn't known. */
  private record Late(LinePainter line, int from, Tag tag, int mark) {}

  Sheet(Book book, Geometry geometry, String name) {
    this.book = book;
    this.geometry = geometry;
    this.name = name;
    this.page = book.page(geometry);
    this.number = book.pages();
    page.getCOSObject()
        .setItem(COSName.STRUCT_PARENTS, COSInteger.get(book.structure().key(marks)));
  }

  Book book() {
    return book;
  }

  Geometry geometry() {
    return geometry;
  }

  /** Its number from 1. */
  int number() {
    return number;
  }

  /** Name of its kind of pages. */
  String name() {
    return name;
  }

  Pen pen() {
    return book.pen();
  }

  /** A height as content streams count it: upwards. */
  float up(float y) {
    return geometry.height() - y;
  }

  /** Draws a filled rectangle that is no content. */
  void rectangle(float x, float y, float width, float height, int colour) {
    artifact();
    pen().rectangle(x, up(y + height), width, height, colour);
  }

  /** What follows is no content. */
  void artifact() {
    if (!artifact) {
      pen().artifact("");
      artifact = true;
      present = null;
    }
  }

  /** What follows is no content but belongs to the paging. */
  void pagination() {
    pen().artifact(PAGINATION);
    artifact = true;
    present = null;
  }

  /** What follows, up to {@link #endRepeated}, was tagged on a page before. */
  void beginRepeated() {
    repeats = true;
    pagination();
  }

  void endRepeated() {
    repeats = false;
  }

  /** Draws something that belongs to the paging, without tags. */
  void repeatedWhile(Runnable drawing) {
    repeats = true;
    drawing.run();
    repeats = false;
  }

  /** Makes sure that an element is in the structure, though it may be empty. */
  void tag(Tag tag) {
    if (!repeats) {
      book.structure().enter(tag);
    }
  }

  /** The glyphs that follow are content of a tag. */
  void mark(Tag tag) {
    if (repeats) {
      artifact();
    } else if (present != tag) {
      pen().markText(tag.type(), book.structure().mark(tag, page.getCOSObject(), marks));
      present = tag;
      artifact = false;
    }
  }

  /** Anchors that lead to a height. */
  void anchors(List<String> names, float y) {
    if (!repeats) {
      for (String anchor : names) {
        book.anchors().put(anchor, page.getCOSObject(), number, up(y));
      }
    }
  }

  /** Lays a link over a rectangle. */
  void link(Link link, float left, float top, float right, float bottom) {
    if (repeats) {
      return;
    }
    COSDictionary annotation = new COSDictionary();
    annotation.setItem(COSName.TYPE, COSName.ANNOT);
    annotation.setName(COSName.SUBTYPE, "Link");
    annotation.setItem(COSName.F, PRINTED);
    COSArray corners = new COSArray();
    for (float corner : new float[] {left, up(bottom), right, up(top)}) {
      corners.add(Numbers.of(corner));
    }
    annotation.setItem(COSName.RECT, corners);
    COSArray none = new COSArray();
    none.add(COSInteger.ZERO);
    none.add(COSInteger.ZERO);
    none.add(COSInteger.ZERO);
    annotation.setItem(COSName.BORDER, none);
    annotation.setItem(COSName.CONTENTS, new COSString(link.title()));
    if (link.target().startsWith("#")) {
      book.anchors().lead(annotation, link.target().substring(1));
    } else {
      COSDictionary action = new COSDictionary();
      action.setName(COSName.S, "URI");
      action.setItem(COSName.URI, new COSString(link.target()));
      action.setDirect(true);
      annotation.setItem(COSName.A, action);
    }
    book.structure().refer(link.tag(), annotation, page.getCOSObject());
    annotations.add(annotation);
  }

  /** Keeps the end of a line until its page number is known. */
  void later(LinePainter line, int from, Tag tag) {
    int mark = book.structure().mark(tag, page.getCOSObject(), marks);
    late.add(new Late(line, from, tag, mark));
  }

  /** Whether what is drawn is a repetition that is not tagged. */
  boolean repeats() {
    return repeats;
  }

  void picture(Image image, Tag tag, float x, float y, float width, float height) {
    if (repeats) {
      artifact();
    } else {
      tag.attributes(Tagger.box(x, up(y + height), x + width, up(y)));
      pen().mark(tag.type(), book.structure().mark(tag, page.getCOSObject(), marks));
      present = tag;
      artifact = false;
    }
    if (image instanceof Image.Drawn drawn) {
      pen().save();
      drawn
          .painting()
          .paintWith(new PageBrush(this, x, y, width / drawn.width() * Values.PT_PER_MM));
      pen().restore();
      return;
    }
    try {
      COSBase object = book.pictures().object((Image.Filed) image);
      COSName called = COSName.getPDFName("I" + (objects.size() + 1));
      objects.setItem(called, object);
      pen().save();
      pen().numbers(width, 0, 0, height, x, up(y + height));
      pen().text("cm\n/" + called.getName() + " Do\n");
      pen().restore();
    } catch (IOException e) {
      throw new UncheckedIOException("a picture can't be printed", e);
    }
  }

  /** Packs the content; nothing is drawn on the page from here on but what is late. */
  void close() {
    pen().unmark();
    COSDictionary dictionary = page.getCOSObject();
    dictionary.setItem(COSName.CONTENTS, book.packed());
    present = null;
    artifact = false;
    if (annotations.size() > 0) {
      dictionary.setItem(COSName.ANNOTS, annotations);
    }
    if (objects.size() > 0) {
      dictionary.setItem(COSName.RESOURCES, book.resourcesWith(objects));
    }
  }

  /** Adds what the end of the document tells: numbers of pages, and what the margins hold. */
  void finish(MarginPrinter margins) {
    for (Late one : late) {
      pen().markText(one.tag().type(), one.mark());
      present = one.tag();
      artifact = false;
      one.line().tail(one.from());
    }
    margins.print(this);
    pen().unmark();
    COSDictionary dictionary = page.getCOSObject();
    if (!pen().isEmpty()) {
      COSArray contents = new COSArray();
      contents.add(dictionary.getItem(COSName.CONTENTS));
      contents.add(book.packed());
      dictionary.setItem(COSName.CONTENTS, contents);
    }
  }
}
