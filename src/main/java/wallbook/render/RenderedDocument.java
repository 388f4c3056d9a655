package wallbook.render;

import java.util.Base64;
import java.util.Map;
import java.util.SortedSet;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;

/** A finished document. */
public final class RenderedDocument {
  private final String fileName;
  private final byte[] pdf;
  private final Document page;
  private final Map<Element, Figure> pictures;
  private final SortedSet<Integer> unprintable;

  /**
   * @param page what was printed; nobody else may change it from now on
   * @param pictures what the picture elements of the page stand for
   */
  RenderedDocument(
      String fileName,
      byte[] pdf,
      Document page,
      Map<Element, Figure> pictures,
      SortedSet<Integer> unprintable) {
    this.fileName = fileName;
    this.pdf = pdf;
    this.page = page;
    this.pictures = pictures;
    this.unprintable = unprintable;
  }

  /** Path of the PDF in the package. */
  public String fileName() {
    return fileName;
  }

  /** The PDF file; the array is the receiver's own. */
  public byte[] pdf() {
    return pdf;
  }

  /**
   * The page it was printed from, with its pictures in it and without a stylesheet; written when it
   * is asked for, for a package has no use for it.
   *
   * @throws TemplateProblem if a drawing holds what acts or loads from elsewhere
   */
  public String html() throws TemplateProblem {
    for (Map.Entry<Element, Figure> picture : pictures.entrySet()) {
      Element element = picture.getKey();
      if (picture.getValue() instanceof Figure.Photograph photograph) {
        String data = Base64.getEncoder().encodeToString(photograph.bytes());
        element.attr("src", "data:" + photograph.mediaType() + ";base64," + data);
      } else if (picture.getValue() instanceof Figure.Drawing drawing) {
        Element svg = Svg.read(fileName, drawing.svg().get());
        element.empty().clearAttributes().appendChildren(svg.childNodes());
        element.attributes().addAll(svg.attributes());
        element.attr("alt", drawing.alternative()).attr("role", "img");
      }
    }
    return page.outerHtml();
  }

  /**
   * Code points of the text that the font lacks, printed as U+FFFD; whoever makes the package
   * should say so.
   */
  public SortedSet<Integer> unprintable() {
    return unprintable;
  }
}
