package wallbook.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.font.PDFont;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.destination.PDPageDestination;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineItem;
import org.apache.pdfbox.pdmodel.interactive.documentnavigation.outline.PDOutlineNode;

/** The parts of a PDF that no reader sees on the page: bookmarks, links, tags, fonts, metadata. */
public final class PdfParts implements AutoCloseable {
  private final PDDocument document;

  public PdfParts(byte[] pdf) {
    try {
      document = Loader.loadPDF(pdf);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public PDDocument document() {
    return document;
  }

  /** Bookmarks with the page each leads to, the text indented by two spaces a level. */
  public Map<String, Integer> bookmarks() throws IOException {
    Map<String, Integer> bookmarks = new LinkedHashMap<>();
    collect(document.getDocumentCatalog().getDocumentOutline(), "", bookmarks);
    return bookmarks;
  }

  private void collect(PDOutlineNode node, String indent, Map<String, Integer> into)
      throws IOException {
    for (PDOutlineItem item : node.children()) {
      PDPageDestination target = (PDPageDestination) item.getDestination();
      into.put(indent + item.getTitle(), target.retrievePageNumber() + 1);
      collect(item, indent + "  ", into);
    }
  }

  /** All links in the order of the pages. */
  public List<PDAnnotationLink> links() throws IOException {
    List<PDAnnotationLink> links = new ArrayList<>();
    for (PDPage page : document.getPages()) {
      for (PDAnnotation annotation : page.getAnnotations()) {
        if (annotation instanceof PDAnnotationLink link) {
          links.add(link);
        }
      }
    }
    return links;
  }

  /** Names of all fonts; fails if one is not embedded. */
  public Set<String> embeddedFonts() throws IOException {
    Set<String> names = new TreeSet<>();
    for (PDPage page : document.getPages()) {
      for (COSName name : page.getResources().getFontNames()) {
        PDFont font = page.getResources().getFont(name);
        if (!font.isEmbedded()) {
          throw new AssertionError("not embedded: " + font.getName());
        }
        names.add(font.getName());
      }
    }
    return names;
  }

  /** All structure elements of a type, in reading order. */
  public List<COSDictionary> tagged(String type) {
    return tags().stream().filter(tag -> tag.getNameAsString(COSName.S).equals(type)).toList();
  }

  /** All structure elements in reading order. */
  public List<COSDictionary> tags() {
    List<COSDictionary> tags = new ArrayList<>();
    walk(document.getDocumentCatalog().getStructureTreeRoot().getCOSObject(), tags);
    return tags;
  }

  /** The structure elements right below one, by type. */
  public static List<String> childTypes(COSDictionary tag) {
    return children(tag).stream()
        .filter(child -> child.containsKey(COSName.S))
        .map(child -> child.getNameAsString(COSName.S))
        .toList();
  }

  private static void walk(COSDictionary tag, List<COSDictionary> into) {
    if (tag.containsKey(COSName.S)) {
      into.add(tag);
    }
    children(tag).forEach(child -> walk(child, into));
  }

  private static List<COSDictionary> children(COSDictionary tag) {
    COSBase kids = tag.getDictionaryObject(COSName.K);
    List<COSDictionary> children = new ArrayList<>();
    if (kids instanceof COSDictionary only) {
      children.add(only);
    } else if (kids instanceof COSArray several) {
      for (int i = 0; i < several.size(); i++) {
        if (several.getObject(i) instanceof COSDictionary child) {
          children.add(child);
        }
      }
    }
    return children;
  }

  @Override
  public void close() throws IOException {
    document.close();
  }
}
