package wallbook.assess.conduit;

import java.util.Locale;
import java.util.Optional;
import wallbook.quantity.Diameter;
import wallbook.quantity.Length;
import wallbook.record.Conduit;
import wallbook.record.ConduitType;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * Inside diameters of conduits. A size alone means nothing: 16 is 15.8 mm in EMT and some 10.7 mm
 * in pliable conduit to IEC 61386, so family and size are looked up together. What the record
 * declares goes before any table; conduits to IEC 61386 have no other bore than the declared one.
 */
public final class Bores {
  private static final Source DECLARED =
      new Source("inside diameter measured or declared in the job record", Standing.CONFIRMED);

  private final Table bores;
  private final Table typical;

  public Bores(Tables tables) {
    this.bores = tables.table("conduit-bores-nec");
    this.typical = tables.table("conduit-bores-iec");
  }

  /** The bore of a conduit; empty if neither the record nor a table has it. */
  Optional<Bore> of(Conduit conduit) {
    Optional<Bore> declared =
        conduit
            .bore()
            .filter(length -> length.inMetres() > 0)
            .map(length -> new Bore(Diameter.of(length), true, DECLARED));
    return declared.or(
        () ->
            row(conduit.type(), conduit.tradeSize())
                .map(row -> new Bore(Diameter.inches(row.number("bore_in")), false, row.source())));
  }

  /**
   * Bore of a family and trade size by NEC chapter 9 table 4.
   *
   * @param size trade size as in {@code 1-1/4}, or metric designator as in {@code 35}
   * @return empty for a size that the family is not made in, and for families to IEC 61386
   */
  public Optional<Diameter> diameter(ConduitType family, String size) {
    return row(family, size).map(row -> Diameter.inches(row.number("bore_in")));
  }

  /** Metric designator of a family and trade size, where the table has it. */
  Optional<Integer> designator(ConduitType family, String size) {
    return row(family, size).map(row -> (int) row.number("metric_designator"));
  }

  /** Trade size as the table writes it, whatever way it is written. */
  Optional<String> size(ConduitType family, String size) {
    return row(family, size).map(row -> row.text("size"));
  }

  /** Trade size in inches, where the table has it: {@code 1-1/4} is 1.25 in. */
  Optional<Length> tradeSize(ConduitType family, String size) {
    return row(family, size).map(row -> Length.inches(inches(row.text("size"))));
  }

  /**
   * Whether the family's size is its outside diameter, and the bore whatever the maker declares.
   */
  static boolean isMadeToIec(ConduitType family) {
    return family == ConduitType.IEC_PLIABLE || family == ConduitType.IEC_RIGID;
  }

  /** What is typical for a conduit to IEC 61386; for a reader, never to compute with. */
  Optional<Diameter> typical(Conduit conduit) {
    String construction =
        conduit.type() == ConduitType.IEC_PLIABLE
            ? "pliable"
            : conduit.type() == ConduitType.IEC_RIGID ? "rigid" : "";
    return typical
        .find(construction, plain(conduit.tradeSize()))
        .map(row -> Diameter.millimetres(row.number("typical_bore_mm")));
  }

  private Optional<Row> row(ConduitType family, String size) {
    String key = family.word().replace('_', '-');
    String plain = plain(size);
    return bores.rows().stream()
        .filter(row -> row.text("family").equals(key))
        .filter(
            row -> row.text("size").equals(plain) || row.text("metric_designator").equals(plain))
        .findFirst();
  }

  /** A size without its unit and with one way of writing whole and fraction. */
  static String plain(String size) {
    return size.strip()
        .toLowerCase(Locale.ROOT)
        .replaceFirst("\\s*(in|inch|mm|\")$", "")
        .replaceAll("\\s+", "-");
  }

  private static double inches(String size) {
    double sum = 0;
    for (String part : size.split("-")) {
      String[] fraction = part.split("/");
      double number = Double.parseDouble(fraction[0]);
      sum += fraction.length == 2 ? number / Double.parseDouble(fraction[1]) : number;
    }
    return sum;
  }
}
