package wallbook.stock;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.finding.Findings;
import wallbook.finding.SourcePosition;
import wallbook.reference.Row;
import wallbook.reference.Tables;

/** The label sheets that can be printed on, by name. Immutable. */
public final class LabelSheets {
  private static final String TABLE = "label-sheets";

  private final Map<String, LabelSheet> byName;

  private LabelSheets(Map<String, LabelSheet> byName) {
    this.byName = byName;
  }

  /**
   * The sheets of the reference table {@code label-sheets}.
   *
   * @throws IllegalStateException if the table is broken
   */
  public static LabelSheets of(Tables tables) {
    Map<String, LabelSheet> byName = new LinkedHashMap<>();
    for (Row row : tables.table(TABLE).rows()) {
      Findings findings = new Findings();
      SourcePosition at = new SourcePosition(TABLE + ".csv", byName.size() + 1, 1);
      LabelSheet sheet =
          new LabelSheetRow(row::text, at, findings)
              .sheet()
              .orElseThrow(() -> new IllegalStateException(findings.inReportOrder().toString()));
      byName.put(sheet.name(), sheet);
    }
    return new LabelSheets(byName);
  }

  /**
   * These sheets and others, which come first: one of the same name takes the place of that here,
   * and one that is usual goes before that here.
   */
  public LabelSheets with(List<LabelSheet> others) {
    Map<String, LabelSheet> joined = new LinkedHashMap<>();
    others.forEach(sheet -> joined.put(sheet.name(), sheet));
    byName.forEach(joined::putIfAbsent);
    return new LabelSheets(joined);
  }

  public Collection<LabelSheet> all() {
    return List.copyOf(byName.values());
  }

  public Optional<LabelSheet> named(String name) {
    return Optional.ofNullable(byName.get(name));
  }

  /**
   * The sheet that is taken for a kind of label when none is named.
   *
   * @param stock the paper of the job's documents
   */
  public LabelSheet usual(LabelKind kind, Stock stock) {
    return byName.values().stream()
        .filter(s -> s.usual() && s.purpose() == kind && s.stock() == stock)
        .findFirst()
        .orElseThrow(
            () -> new IllegalStateException("no usual sheet of " + stock + " for " + kind));
  }
}
