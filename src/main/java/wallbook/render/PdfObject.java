package wallbook.render;

import java.io.IOException;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.ICOSVisitor;

/**
 * An object of a file that tells its entries when it is written, where a dictionary of the PDF
 * library would hold them in a map all the while. A tagged schedule has one for each cell.
 */
public abstract class PdfObject extends COSBase {
  /** Its number in the file; 0 until the file refers to it. */
  private int number;

  /** Takes the entries of an object. */
  public interface Entries {
    void entry(COSName key, COSBase value) throws IOException;
  }

  /** Tells the entries, always in the same order. */
  public abstract void tell(Entries entries) throws IOException;

  int number() {
    return number;
  }

  void number(int given) {
    number = given;
  }

  @Override
  public void accept(ICOSVisitor visitor) throws IOException {
    COSDictionary same = new COSDictionary();
    tell(same::setItem);
    visitor.visitFromDictionary(same);
  }
}
