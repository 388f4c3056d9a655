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

  private List<Row> rows(boolean singleMode) {
    String kind = singleMode ? "single-mode" : "multimode";
    return table.rows().stream().filter(row -> row.text("kind").equals(kind)).toList();
  }
}
