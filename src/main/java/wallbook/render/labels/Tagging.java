package wallbook.render.labels;

import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import wallbook.render.Structure;
import wallbook.render.Tag;

/** Joins what is drawn on a page to the structure of its file. */
final class Tagging {
  private final Structure structure = new Structure();
  private final Tag document = new Tag(null, "Document");
  private COSDictionary page = new COSDictionary();
  private COSArray onPage = new COSArray();

  /** The tag that holds all others. */
  Tag document() {
    return document;
  }

  /** Begins a page; what is marked from now on is on it. */
  void begin(PDPage begun) {
    page = begun.getCOSObject();
    onPage = new COSArray();
    page.setInt(COSName.STRUCT_PARENTS, structure.key(onPage));
    page.setItem(COSName.getPDFName("Tabs"), COSName.S);
  }

  /** The number by which content of the present page is marked as that of a tag. */
  int mark(Tag tag) {
    return structure.mark(tag, page, onPage);
  }

  /** Brings the tags into the file; to be called when all pages are drawn. */
  void finish(PDDocument pdf) {
    pdf.getDocumentCatalog().getCOSObject().setItem(COSName.STRUCT_TREE_ROOT, structure.finish());
  }
}
