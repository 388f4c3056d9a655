package wallbook.render.press;

import java.io.IOException;
import java.util.BitSet;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.font.PDType0Font;
import wallbook.render.Face;
import wallbook.render.Fonts;
import wallbook.render.Typeface;

/** The faces of one document, and which characters of each it uses. */
final class Typecase {
  private final BitSet[] used = new BitSet[Face.values().length];
  private final COSDictionary fonts = new COSDictionary();

  /** The number by which a face is called in content: {@code /F} with it. */
  int number(Face face) {
    return face.ordinal() + 1;
  }

  /** The glyph of a character, which the file will carry. */
  int glyph(Face face, Typeface typeface, int character) {
    BitSet characters = used[face.ordinal()];
    if (characters == null) {
      characters = new BitSet();
      used[face.ordinal()] = characters;
    }
    characters.set(character);
    return typeface.glyph(character);
  }

  /** The fonts as resources of pages; filled at the end. */
  COSDictionary fonts() {
    return fonts;
  }

  /** Embeds the faces with the glyphs that were used. */
  void embed(PDDocument pdf) throws IOException {
    for (Face face : Face.values()) {
      BitSet characters = used[face.ordinal()];
      if (characters != null) {
        embed(pdf, face, characters);
      }
    }
  }

  private void embed(PDDocument pdf, Face face, BitSet characters) throws IOException {
    Typeface typeface = Fonts.typeface(face);
    // The font file is shared, and reading it moves a place in it.
    synchronized (typeface) {
      PDType0Font font = Fonts.subset(pdf, face);
      characters.stream().map(typeface::printed).forEach(font::addToSubset);
      font.subset();
      fonts.setItem(COSName.getPDFName("F" + number(face)), font.getCOSObject());
    }
  }
}
