package wallbook.render.press;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.Test;
import wallbook.render.PdfFile;

/** The structure that a reader program is told of (ISO 32000-1, 14.8.4). */
class TagsTest {
  private static String tags(String body) throws Exception {
    byte[] file;
    try (PDDocument pdf = new PDDocument()) {
      Press.print(
          pdf,
          Jsoup.parse("<html lang=en><body>" + body),
          StyleSheet.read("@page { size: 300pt 100pt; margin: 0 } body { font-size: 5pt }"),
          Map.of(),
          List.of());
      file = PdfFile.of(pdf);
    }
    try (PDDocument pdf = Loader.loadPDF(file)) {
      StringBuilder tags = new StringBuilder();
      write(
          pdf.getDocumentCatalog().getStructureTreeRoot().getCOSObject().getItem(COSName.K), tags);
      return tags.toString();
    }
  }

  private static void write(COSBase kid, StringBuilder into) {
    COSBase direct = kid instanceof COSObject object ? object.getObject() : kid;
    if (direct instanceof COSArray several) {
      several.forEach(each -> write(each, into));
    } else if (direct instanceof COSDictionary element && element.containsKey(COSName.S)) {
      into.append(into.isEmpty() || into.charAt(into.length() - 1) == '(' ? "" : " ");
      into.append(element.getNameAsString(COSName.S));
      if (element.containsKey(COSName.K)) {
        into.append('(');
        write(element.getItem(COSName.K), into);
        into.append(')');
      }
    }
  }

  @Test
  void headingsParagraphsAndListsAreTold() throws Exception {
    assertEquals(
        "Document(H1() P() L(LI(Lbl() LBody()) LI(Lbl() LBody(L(LI(Lbl() LBody()))))))",
        tags("<h1>a</h1><p>b</p><ul><li>c<li><ul><li>d</ul></ul>"));
  }

  @Test
  void aListWithoutMarksHasNoLabels() throws Exception {
    assertEquals("Document(L(LI(LBody())))", tags("<ul style='list-style-type: none'><li>c</ul>"));
  }

  @Test
  void aTableHasRowsOfCellsEvenIfTheyAreEmpty() throws Exception {
    assertEquals(
        "Document(Table(THead(TR(TH() TH())) TBody(TR(TD() TD) TR(TD() TD()))))",
        tags(
            "<table><thead><tr><th>a<th>b</thead>"
                + "<tbody><tr><td>c<td></td></tr><tr><td>d<td>e</tbody></table>"));
  }

  @Test
  void aRepeatedHeadIsToldOnce() throws Exception {
    String tags =
        tags(
            "<table><thead><tr><th>a</thead><tbody>"
                + "<tr><td>b</td></tr>".repeat(40)
                + "</tbody></table>");
    assertEquals(1, tags.split("TH\\(\\)", -1).length - 1);
    assertEquals(40, tags.split("TD\\(\\)", -1).length - 1);
  }

  @Test
  void theContentsAreToldAsSuch() throws Exception {
    assertEquals(
        "Document(Div(TOC(TOCI(Reference(Link())))) H1())",
        tags(
            "<div class=contents><ul style='list-style-type: none'><li><a href='#a'>x</a></ul></div>"
                + "<h1 id=a>x</h1>"));
  }

  @Test
  void textRightInABlockIsAParagraph() throws Exception {
    assertEquals("Document(Div(P() P() P()))", tags("<div>a<p>b</p>c</div>"));
  }

  @Test
  void aParagraphOverTwoPagesIsOne() throws Exception {
    assertEquals("Document(P())", tags("<p>" + "x<br>".repeat(30)));
  }
}
