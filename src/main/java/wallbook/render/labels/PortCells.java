package wallbook.render.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.compose.labels.PortStrip;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.stock.LabelArea;
import wallbook.stock.LabelSheet;

/** Lays out a strip for ports: cells of equal width, as far apart as the ports. */
final class PortCells {
  /** White between the number of a port and what stands beneath. */
  private static final double NUMBER_GAP_MM = 0.6;

  private final LabelSheet sheet;
  private final Stack stack;
  private final Findings findings;

  PortCells(LabelSheet sheet, Stack stack, Findings findings) {
    this.sheet = sheet;
    this.stack = stack;
    this.findings = findings;
  }

  /** The strip, if every port's label fits; cells beyond the last port stay empty. */
  Optional<LabelFace> lay(PortStrip strip) {
    LabelSheet.Size size = sheet.label().size();
    double pitch = size.widthMm() / sheet.label().cells().orElseThrow();
    List<TypeLine> lines = new ArrayList<>();
    List<LabelFace.Rule> rules = new ArrayList<>();
    boolean complete = true;
    for (int i = 0; i < strip.ports().size(); i++) {
      LabelArea cell =
          new LabelArea(i * pitch, 0, pitch, size.heightMm()).inset(sheet.label().edgeMm());
      if (i > 0) {
        rules.add(new LabelFace.Rule(i * pitch, cell.yMm(), i * pitch, cell.bottomMm()));
      }
      Optional<List<TypeLine>> port = lay(strip.ports().get(i), cell);
      complete &= port.isPresent();
      port.ifPresent(lines::addAll);
    }
    return complete ? Optional.of(new LabelFace(lines, Optional.empty(), rules)) : Optional.empty();
  }

  private Optional<List<TypeLine>> lay(PortStrip.Port port, LabelArea cell) {
    TypeLine number = stack.number(port.number());
    List<TypeLine> lines = new ArrayList<>();
    lines.add(
        number.moved(
            cell.xMm() + (cell.widthMm() - number.widthMm()) / 2, cell.yMm() + number.ascentMm()));
    if (port.label().isEmpty()) {
      return Optional.of(lines);
    }
    double taken = number.ascentMm() + NUMBER_GAP_MM;
    LabelArea below =
        new LabelArea(cell.xMm(), cell.yMm() + taken, cell.widthMm(), cell.heightMm() - taken);
    List<Part> parts =
        port.otherEnd().isEmpty()
            ? List.of()
            : List.of(new Part.Text(port.otherEnd(), false, true));
    String label = port.label().get();
    Optional<List<TypeLine>> set = stack.set(HouseSizes.Slot.CELL, label, parts, below, true);
    if (set.isEmpty()) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "label-does-not-fit",
                  port.at(),
                  "label",
                  label,
                  "sheet",
                  sheet.name())
              .found(label));
    }
    return set.map(
        text -> {
          lines.addAll(text);
          return lines;
        });
  }
}
