package wallbook.render;

import java.io.IOException;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;

/** What stands last on the pages of a tagged PDF. */
public final class PageEnds {
  private final Map<COSDictionary, TreeMap<Integer, String>> pages = new HashMap<>();

  private PageEnds() {}

  /** The type of the innermost tag, such as {@code P} or {@code TH}, that each page ends with. */
  public static List<String> of(byte[] pdf) throws IOException {
    PageEnds ends = new PageEnds();
    List<String> last = new ArrayList<>();
    try (PDDocument document = Loader.loadPDF(pdf)) {
      COSDictionary root = document.getDocumentCatalog().getStructureTreeRoot().getCOSObject();
      ends.walk(root.getItem(COSName.K), null, "");
      for (PDPage page : document.getPages()) {
        TreeMap<Integer, String> marks = ends.pages.get(page.getCOSObject());
        last.add(marks == null ? "" : marks.lastEntry().getValue());
      }
    }
    return last;
  }

  private void walk(COSBase kid, COSDictionary page, String type) {
    COSBase direct = kid instanceof COSObject object ? object.getObject() : kid;
    if (direct instanceof COSArray several) {
      several.forEach(each -> walk(each, page, type));
    } else if (direct instanceof COSInteger mark) {
      put(page, mark.intValue(), type);
    } else if (direct instanceof COSDictionary dictionary) {
      COSDictionary own = dictionary.getCOSDictionary(COSName.PG);
      COSDictionary on = own == null ? page : own;
      if (dictionary.containsKey(COSName.MCID)) {
        put(on, dictionary.getInt(COSName.MCID), type);
      } else if (dictionary.containsKey(COSName.K)) {
        walk(dictionary.getItem(COSName.K), on, dictionary.getNameAsString(COSName.S));
      }
    }
  }

  private void put(COSDictionary page, int mark, String type) {
    pages.computeIfAbsent(page, p -> new TreeMap<>()).put(mark, type);
  }
}
