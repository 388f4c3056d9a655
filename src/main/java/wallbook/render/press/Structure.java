package wallbook.render.press;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSString;

/** Grows the structure tree of a file while its pages are written (ISO 32000-1, 14.7). */
final class Structure {
  private static final COSName MCR = COSName.getPDFName("MCR");
  private static final COSName OBJR = COSName.getPDFName("OBJR");
  private static final COSName PARENT_TREE_NEXT_KEY = COSName.getPDFName("ParentTreeNextKey");

  private final COSDictionary root = new COSDictionary();
  private final COSArray parents = new COSArray();
  private int nextKey;

  /** Gives something that has one, a page or an annotation, its place in the parent tree. */
  int key(COSBase parent) {
    parents.add(COSInteger.get(nextKey));
    parents.add(parent);
    return nextKey++;
  }

  /** The element of a tag, which comes into the tree if it isn't there yet. */
  COSDictionary element(Tag tag) {
    if (tag.element() == null) {
      COSDictionary around = tag.parent() == null ? root : element(tag.parent());
      COSDictionary element = new COSDictionary();
      element.setItem(COSName.S, COSName.getPDFName(tag.type()));
      element.setItem(COSName.P, around);
      if (!tag.alternative().isEmpty()) {
        element.setItem(COSName.ALT, new COSString(tag.alternative()));
      }
      tag.attributes().ifPresent(attributes -> element.setItem(COSName.A, attributes));
      tag.element(element);
      addKid(around, element);
    }
    return tag.element();
  }

  /**
   * Joins content of a page to the element of a tag.
   *
   * @param onPage the elements that the content of the page belongs to, by number
   * @return the number by which the content is marked
   */
  int mark(Tag tag, COSDictionary page, COSArray onPage) {
    COSDictionary element = element(tag);
    int number = onPage.size();
    onPage.add(element);
    COSDictionary own = element.getCOSDictionary(COSName.PG);
    if (own == null) {
      element.setItem(COSName.PG, page);
      own = page;
    }
    if (own == page) {
      addKid(element, COSInteger.get(number));
    } else {
      COSDictionary reference = new COSDictionary();
      reference.setItem(COSName.TYPE, MCR);
      reference.setItem(COSName.PG, page);
      reference.setItem(COSName.MCID, COSInteger.get(number));
      reference.setDirect(true);
      addKid(element, reference);
    }
    return number;
  }

  /** Joins an annotation of a page to the element of a tag. */
  void refer(Tag tag, COSDictionary annotation, COSDictionary page) {
    COSDictionary element = element(tag);
    COSDictionary reference = new COSDictionary();
    reference.setItem(COSName.TYPE, OBJR);
    reference.setItem(COSName.OBJ, annotation);
    reference.setItem(COSName.PG, page);
    reference.setDirect(true);
    addKid(element, reference);
    annotation.setItem(COSName.STRUCT_PARENT, COSInteger.get(key(element)));
  }

  private static void addKid(COSDictionary element, COSBase kid) {
    COSBase kids = element.getDictionaryObject(COSName.K);
    if (kids == null) {
      element.setItem(COSName.K, kid);
    } else if (kids instanceof COSArray several) {
      several.add(kid);
    } else {
      COSArray several = new COSArray();
      several.add(kids);
      several.add(kid);
      element.setItem(COSName.K, several);
    }
  }

  /** The root of the tree, when all pages are written. */
  COSDictionary finish() {
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, parents);
    root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
    root.setItem(COSName.PARENT_TREE, tree);
    root.setItem(PARENT_TREE_NEXT_KEY, COSInteger.get(nextKey));
    return root;
  }
}
