package wallbook.stock;

import java.util.Arrays;
import java.util.Locale;
import java.util.Optional;
import wallbook.record.Word;

/** The kinds of labels that are printed for a job. */
public enum LabelKind implements Word {
  CABLE_WRAPS,
  PLATE_STRIPS,
  PORT_STRIPS,
  CONDUIT_TAGS;

  /** Name in commands and of the file, for instance {@code cable-wraps}. */
  public String hyphened() {
    return name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /** Path of the file in the package. */
  public String file() {
    return "labels/" + hyphened() + ".pdf";
  }

  /** The kind of the given name, with hyphens or underscores. */
  public static Optional<LabelKind> named(String name) {
    String word = name.toLowerCase(Locale.ROOT).replace('-', '_');
    return Arrays.stream(values()).filter(kind -> kind.word().equals(word)).findFirst();
  }
}
