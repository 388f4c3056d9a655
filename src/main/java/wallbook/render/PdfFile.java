package wallbook.render;

import java.io.IOException;
import java.io.InputStream;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.zip.Deflater;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSBoolean;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSFloat;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSNull;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdfwriter.COSWriter;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * Writes a new, unlocked PDF: the objects in the order in which they are first referred to, all but
 * streams packed into object streams, and where each stands as a stream too (ISO 32000-1, 7.5.7 and
 * 7.5.8). The same objects give the same bytes. A tagged schedule has an object for each cell; the
 * PDF library's own writer is made for files that were read and changed, and takes several times as
 * long.
 */
public final class PdfFile {
  private static final String HEAD = "%PDF-1.7\n%";

  /** Tells programs that the file is no text. */
  private static final byte[] BINARY = {(byte) 0xF6, (byte) 0xE4, (byte) 0xFC, (byte) 0xDF, '\n'};

  private static final int OBJECTS_PER_STREAM = 400;
  private static final int ENTRY_BYTES = 7;

  /** Of packing objects; the usual 6 takes twice as long for a fortieth less. */
  private static final int LEVEL = 4;

  private static final COSName[] OF_TRAILER = {COSName.ROOT, COSName.INFO, COSName.ID};

  private final PdfBytes file = new PdfBytes(1 << 18);
  private final Deflater deflater = new Deflater(LEVEL);
  private final IdentityHashMap<COSBase, Integer> numbers = new IdentityHashMap<>(1 << 10);
  private final List<COSBase> objects = new ArrayList<>();
  private final Map<COSName, byte[]> names = new HashMap<>();
  private int[] places = new int[1 << 10];
  private int[] indexes = new int[1 << 10];
  private final PdfBytes heads = new PdfBytes(1 << 13);
  private final PdfBytes bodies = new PdfBytes(1 << 15);
  private int holder;
  private int held;

  private PdfFile() {}

  /** The bytes of a file, whose fonts have come to their end. */
  public static byte[] of(PDDocument pdf) throws IOException {
    PdfFile writer = new PdfFile();
    try {
      return writer.written(pdf.getDocument().getTrailer());
    } finally {
      writer.deflater.end();
    }
  }

  private byte[] written(COSDictionary trailer) throws IOException {
    file.text(HEAD);
    file.write(BINARY);
    for (COSName key : OF_TRAILER) {
      if (trailer.getDictionaryObject(key) instanceof COSDictionary dictionary) {
        number(dictionary);
      }
    }
    // What is written refers to more, which comes to the end of the list.
    for (int i = 0; i < objects.size(); i++) {
      COSBase object = objects.get(i);
      if (object instanceof COSStream stream) {
        stream(i + 1, stream);
      } else if (object != COSNull.NULL) {
        hold(i + 1, object);
      }
    }
    endHolder();
    places(trailer);
    return file.copy();
  }

  /** The number of an object, which will be written if it isn't yet. */
  private int number(COSBase object) {
    if (object instanceof PdfObject own) {
      if (own.number() == 0) {
        own.number(add(own));
      }
      return own.number();
    }
    Integer known = numbers.get(object);
    if (known == null) {
      known = add(object);
      numbers.put(object, known);
    }
    return known;
  }

  private int add(COSBase object) {
    objects.add(object);
    return objects.size();
  }

  private void place(int number, int place, int index) {
    if (number >= places.length) {
      places = Arrays.copyOf(places, Math.max(number + 1, places.length * 2));
      indexes = Arrays.copyOf(indexes, places.length);
    }
    places[number] = place;
    indexes[number] = index;
  }

  private void stream(int number, COSStream stream) throws IOException {
    begin(number);
    file.text("<<");
    entries(stream, file);
    try (InputStream packed = stream.createRawInputStream()) {
      data(packed.readAllBytes());
    }
  }

  /** Begins an object of its own. */
  private void begin(int number) {
    place(number, file.length(), -1);
    file.integer(number);
    file.text(" 0 obj\n");
  }

  /** Ends a stream whose dictionary is open. */
  private void data(byte[] bytes) {
    file.text("/Length ");
    file.integer(bytes.length);
    file.text(">>\nstream\n");
    file.write(bytes, 0, bytes.length);
    file.text("\nendstream\nendobj\n");
  }

  /** Puts an object into the object stream at hand. */
  private void hold(int number, COSBase object) throws IOException {
    if (held == 0) {
      holder = add(COSNull.NULL);
    }
    place(number, holder, held);
    heads.integer(number);
    heads.write(' ');
    heads.integer(bodies.length());
    heads.write(' ');
    bodies.text("<<");
    if (object instanceof PdfObject own) {
      own.tell((key, value) -> entry(key, value, bodies));
    } else {
      entries((COSDictionary) object, bodies);
    }
    bodies.text(">>");
    held++;
    if (held == OBJECTS_PER_STREAM) {
      endHolder();
    }
  }

  private void endHolder() {
    if (held == 0) {
      return;
    }
    begin(holder);
    file.text("<</Type/ObjStm/N ");
    file.integer(held);
    file.text("/First ");
    file.integer(heads.length());
    file.text("/Filter/FlateDecode");
    heads.add(bodies);
    data(heads.packed(deflater));
    heads.clear();
    bodies.clear();
    held = 0;
  }

  private void entries(COSDictionary dictionary, PdfBytes out) throws IOException {
    for (Map.Entry<COSName, COSBase> entry : dictionary.entrySet()) {
      boolean known = dictionary instanceof COSStream && entry.getKey().equals(COSName.LENGTH);
      if (!known && entry.getValue() != null) {
        entry(entry.getKey(), entry.getValue(), out);
      }
    }
  }

  private void entry(COSName key, COSBase value, PdfBytes out) throws IOException {
    out.write(name(key));
    value(value, out, true);
  }

  private byte[] name(COSName name) throws IOException {
    byte[] written = names.get(name);
    if (written == null) {
      PdfBytes bytes = new PdfBytes(16);
      name.writePDF(bytes);
      written = bytes.copy();
      names.put(name, written);
    }
    return written;
  }

  /**
   * @param parted whether a blank has to part a number from what is before
   */
  private void value(COSBase value, PdfBytes out, boolean parted) throws IOException {
    if (value instanceof COSName name) {
      out.write(name(name));
    } else if (value instanceof COSArray array) {
      array(array, out);
    } else if (value instanceof COSString string) {
      COSWriter.writeString(string, out);
    } else if (value instanceof COSObject object) {
      value(object.getObject(), out, parted);
    } else if (value instanceof COSDictionary dictionary && isInside(dictionary)) {
      out.text("<<");
      entries(dictionary, out);
      out.text(">>");
    } else {
      if (parted) {
        out.write(' ');
      }
      bare(value, out);
    }
  }

  private static boolean isInside(COSDictionary dictionary) {
    return dictionary.isDirect() && !(dictionary instanceof COSStream);
  }

  /** Writes what is not parted by itself from what is before. */
  private void bare(COSBase value, PdfBytes out) throws IOException {
    if (value instanceof COSDictionary || value instanceof PdfObject) {
      out.integer(number(value));
      out.text(" 0 R");
    } else if (value instanceof COSInteger integer) {
      out.integer(integer.longValue());
    } else if (value instanceof COSFloat number) {
      number.writePDF(out);
    } else if (value instanceof COSBoolean truth) {
      out.text(truth.getValue() ? "true" : "false");
    } else {
      out.text("null");
    }
  }

  private void array(COSArray array, PdfBytes out) throws IOException {
    out.write('[');
    for (int i = 0; i < array.size(); i++) {
      COSBase value = array.get(i);
      value(value == null ? COSNull.NULL : value, out, i > 0);
    }
    out.write(']');
  }

  /**
   * Writes where each object is. Each entry is written as the difference to the one above (PNG's
   * filter "up", RFC 2083, 6.4), which makes those of an object stream alike.
   */
  private void places(COSDictionary trailer) throws IOException {
    int number = add(COSNull.NULL);
    int begin = file.length();
    begin(number);
    PdfBytes entries = new PdfBytes((number + 1) * (ENTRY_BYTES + 1));
    long above = 0;
    for (int i = 0; i <= number; i++) {
      boolean free = i == 0;
      boolean whole = !free && indexes[i] < 0;
      long type = free ? 0 : whole ? 1 : 2;
      long entry = type << 48 | (long) places[i] << 16 | (whole ? 0 : indexes[i]);
      entries.write(2);
      for (int shift = 8 * (ENTRY_BYTES - 1); shift >= 0; shift -= 8) {
        entries.write((int) ((entry >> shift & 0xFF) - (above >> shift & 0xFF)));
      }
      above = entry;
    }
    file.text("<</Type/XRef/W[1 4 2]/Size ");
    file.integer(number + 1);
    for (COSName key : OF_TRAILER) {
      COSBase value = trailer.getDictionaryObject(key);
      if (value != null) {
        file.write(name(key));
        value(value, file, true);
      }
    }
    file.text("/Filter/FlateDecode/DecodeParms<</Predictor 12/Columns ");
    file.integer(ENTRY_BYTES);
    file.text(">>");
    data(entries.packed(deflater));
    file.text("startxref\n");
    file.integer(begin);
    file.text("\n%%EOF\n");
  }
}
