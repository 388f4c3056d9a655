package wallbook.render;

import java.io.IOException;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.documentinterchange.markedcontent.PDMarkedContent;
import org.apache.pdfbox.text.PDFMarkedContentExtractor;
import org.apache.pdfbox.text.TextPosition;

/** The text of a tagged PDF in the order of its tags: cell by cell, whatever lies beside it. */
public final class TaggedText {
  private final Map<COSDictionary, Map<Integer, String>> pages = new HashMap<>();
  private final StringBuilder text = new StringBuilder();

  private TaggedText() {}

  /** All text that has a tag; a line end after each element. */
  public static String of(PDDocument document) throws IOException {
    TaggedText tagged = new TaggedText();
    for (PDPage page : document.getPages()) {
      PDFMarkedContentExtractor extractor = new PDFMarkedContentExtractor();
      extractor.processPage(page);
      Map<Integer, String> pieces = new HashMap<>();
      collect(extractor.getMarkedContents(), pieces);
      tagged.pages.put(page.getCOSObject(), pieces);
    }
    COSDictionary root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
    tagged.walk(root.getDictionaryObject(COSName.K), null);
    return tagged.text.toString();
  }

  private static void collect(List<PDMarkedContent> contents, Map<Integer, String> pieces) {
    for (PDMarkedContent content : contents) {
      List<Object> parts = content.getContents();
      String said =
          parts.stream()
              .filter(TextPosition.class::isInstance)
              .map(part -> ((TextPosition) part).getUnicode())
              .collect(Collectors.joining());
      if (content.getMCID() >= 0) {
        pieces.merge(content.getMCID(), said, String::concat);
      }
      collect(
          parts.stream()
              .filter(PDMarkedContent.class::isInstance)
              .map(PDMarkedContent.class::cast)
              .toList(),
          pieces);
    }
  }

  private void walk(COSBase kid, COSDictionary page) {
    COSBase direct = kid instanceof COSObject object ? object.getObject() : kid;
    if (direct instanceof COSArray several) {
      several.forEach(each -> walk(each, page));
    } else if (direct instanceof COSInteger mark) {
      append(page, mark.intValue());
    } else if (direct instanceof COSDictionary dictionary) {
      COSDictionary own = dictionary.getCOSDictionary(COSName.PG);
      COSDictionary on = own == null ? page : own;
      if (dictionary.containsKey(COSName.MCID)) {
        append(on, dictionary.getInt(COSName.MCID));
      } else if (dictionary.containsKey(COSName.K)) {
        walk(dictionary.getDictionaryObject(COSName.K), on);
        text.append('\n');
      }
    }
  }

  private void append(COSDictionary page, int mark) {
    text.append(pages.getOrDefault(page, Map.of()).getOrDefault(mark, ""));
  }
}
