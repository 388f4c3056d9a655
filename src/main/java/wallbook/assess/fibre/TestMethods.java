package wallbook.assess.fibre;

import java.util.List;
import wallbook.quantity.Wavelength;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** At which wavelengths a link is tested with light source and power meter, and by what method. */
final class TestMethods {
  private final Table table;

  TestMethods(Tables tables) {
    table = tables.table("fibre-test-methods");
  }

  List<Wavelength> wavelengths(boolean singleMode) {
    return rows(singleMode).stream()
        .map(row -> Wavelength.nanometres(row.number("wavelength_nm")))
        .toList();
  }

  Source source(boolean singleMode) {
    return rows(singleMode).get(0).source();
  }

  /**
   * Whether a reading serves as one at a test wavelength: sources are off their nominal wavelength
   * by some ten nanometres, and one of 1310 nm serves multimode as 1300.
   */
  boolean serves(Reading reading, Wavelength at, boolean singleMode) {
    double off = Math.abs(reading.loss().wavelength().inNanometres() - at.inNanometres());
    return rows(singleMode).stream()
        .filter(row -> row.number("wavelength_nm") == at.inNanometres())
        .anyMatch(row -> off <= row.number("tolerance_nm"));
  }

  private List<Row> rows(boolean singleMode) {
    String kind = singleMode ? "single-mode" : "multimode";
    return table.rows().stream().filter(row -> row.text("kind").equals(kind)).toList();
  }
}
