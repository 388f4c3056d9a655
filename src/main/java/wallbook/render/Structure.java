package wallbook.render;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;

/** Grows the structure tree of a file while its pages are written (ISO 32000-1, 14.7). */
public final class Structure {
  private static final COSName MCR = COSName.getPDFName("MCR");
  private static final COSName OBJR = COSName.getPDFName("OBJR");
  private static final COSName PARENT_TREE_NEXT_KEY = COSName.getPDFName("ParentTreeNextKey");

  private final COSDictionary root = new COSDictionary();
  private final COSArray outermost = new COSArray();
  private final COSArray parents = new COSArray();
  private int nextKey;

  /** Gives something that has one, a page or an annotation, its place in the parent tree. */
  public int key(COSBase parent) {
    parents.add(COSInteger.get(nextKey));
    parents.add(parent);
    return nextKey++;
  }

  /** Brings a tag into the tree if it isn't there yet. */
  public void enter(Tag tag) {
    if (tag.isInFile()) {
      return;
    }
    Tag parent = tag.parent();
    if (parent == null) {
      tag.enter(root);
      outermost.add(tag);
    } else {
      enter(parent);
      tag.enter(parent);
      parent.add(tag);
    }
  }

  /**
   * Joins content of a page to a tag.
   *
   * @param onPage the tags that the content of the page belongs to, by number
   * @return the number by which the content is marked
   */
  public int mark(Tag tag, COSDictionary page, COSArray onPage) {
    enter(tag);
    int number = onPage.size();
    onPage.add(tag);
    if (tag.page(page) == page) {
      tag.add(COSInteger.get(number));
    } else {
      COSDictionary reference = new COSDictionary();
      reference.setItem(COSName.TYPE, MCR);
      reference.setItem(COSName.PG, page);
      reference.setItem(COSName.MCID, COSInteger.get(number));
      reference.setDirect(true);
      tag.add(reference);
    }
    return number;
  }

  /** Joins an annotation of a page to a tag. */
  public void refer(Tag tag, COSDictionary annotation, COSDictionary page) {
    enter(tag);
    COSDictionary reference = new COSDictionary();
    reference.setItem(COSName.TYPE, OBJR);
    reference.setItem(COSName.OBJ, annotation);
    reference.setItem(COSName.PG, page);
    reference.setDirect(true);
    tag.add(reference);
    annotation.setItem(COSName.STRUCT_PARENT, COSInteger.get(key(tag)));
  }

  /** The root of the tree, when all pages are written. */
  public COSDictionary finish() {
    COSDictionary tree = new COSDictionary();
    tree.setItem(COSName.NUMS, parents);
    root.setItem(COSName.TYPE, COSName.STRUCT_TREE_ROOT);
    root.setItem(COSName.K, outermost);
    root.setItem(COSName.PARENT_TREE, tree);
    root.setItem(PARENT_TREE_NEXT_KEY, COSInteger.get(nextKey));
    return root;
  }
}
