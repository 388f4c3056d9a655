package wallbook.render;

import java.util.SortedSet;
import org.jsoup.nodes.Document;

/** A finished document. */
public final class RenderedDocument {
  private final String fileName;
  private final byte[] pdf;
  private final Document page;
  private final SortedSet<Integer> unprintable;

  /**
   * @param page what was printed; nobody else may change it from now on
   */
  RenderedDocument(String fileName, byte[] pdf, Document page, SortedSet<Integer> unprintable) {
    this.fileName = fileName;
    this.pdf = pdf;
    this.page = page;
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
   * The page it was printed from, with its drawings in it and without a stylesheet; written when it
   * is asked for, for a package has no use for it.
   */
  public String html() {
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
