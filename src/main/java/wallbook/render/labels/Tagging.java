package wallbook.render.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.common.PDNumberTreeNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDMarkedContentReference;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDParentTreeValue;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureElement;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureNode;
import org.apache.pdfbox.pdmodel.documentinterchange.logicalstructure.PDStructureTreeRoot;
import org.apache.pdfbox.pdmodel.documentinterchange.taggedpdf.StandardStructureTypes;

/** Grows the structure tree of a document while its pages are drawn (ISO 32000-1, 14.7). */
final class Tagging {
  private final PDStructureTreeRoot root = new PDStructureTreeRoot();
  private final PDStructureElement document;
  private final Map<Integer, PDParentTreeValue> byPage = new TreeMap<>();
  private final List<PDPage> pages = new ArrayList<>();
  private COSArray onPage = new COSArray();

  Tagging(PDDocument pdf) {
    pdf.getDocumentCatalog().setStructureTreeRoot(root);
    document = new PDStructureElement(StandardStructureTypes.DOCUMENT, root);
    root.appendKid(document);
  }

  /** The element that holds all others. */
  PDStructureElement document() {
    return document;
  }

  /** Begins a page; what is marked from now on is on it. */
  void begin(PDPage page) {
    int index = pages.size();
    pages.add(page);
    page.setStructParents(index);
    page.getCOSObject().setItem(COSName.getPDFName("Tabs"), COSName.S);
    onPage = new COSArray();
    byPage.put(index, new PDParentTreeValue(onPage));
  }

  /** A new element below another. */
  PDStructureElement element(String type, PDStructureNode parent) {
    PDStructureElement element = new PDStructureElement(type, parent);
    parent.appendKid(element);
    return element;
  }

  /** The number by which content of the present page is marked as that of an element. */
  int mark(PDStructureElement element) {
    int number = onPage.size();
    PDMarkedContentReference reference = new PDMarkedContentReference();
    reference.setPage(pages.get(pages.size() - 1));
    reference.getCOSObject().setItem(COSName.MCID, COSInteger.get(number));
    element.setPage(pages.get(pages.size() - 1));
    element.appendKid(reference);
    onPage.add(element.getCOSObject());
    return number;
  }

  /** Joins content and elements; to be called when all pages are drawn. */
  void finish() {
    PDNumberTreeNode parents = new PDNumberTreeNode(PDParentTreeValue.class);
    parents.setNumbers(byPage);
    root.setParentTree(parents);
    root.setParentTreeNextKey(pages.size());
  }
}
