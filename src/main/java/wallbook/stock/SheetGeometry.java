package wallbook.stock;

import java.util.Locale;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;

/** Whether the measures of a label sheet go together. */
final class SheetGeometry {
  private static final double TOLERANCE_MM = 0.001;

  private final SourcePosition at;
  private final Findings findings;
  private boolean sound = true;

  SheetGeometry(SourcePosition at, Findings findings) {
    this.at = at;
    this.findings = findings;
  }

  boolean isSound(LabelSheet sheet) {
    LabelSheet.Grid grid = sheet.grid();
    LabelSheet.Size size = sheet.label().size();
    LabelArea last = sheet.area(sheet.labels());
    if (!sheet.pageArea().holds(sheet.area(1)) || !sheet.pageArea().holds(last)) {
      refuse("labels-off-the-page", mm(last.rightMm()) + " x " + mm(last.bottomMm()), sheet);
    }
    if (grid.columns() > 1 && grid.pitchXMm() < size.widthMm() - TOLERANCE_MM) {
      refuse("labels-overlap", "pitch_x_mm: " + mm(grid.pitchXMm()), sheet);
    }
    if (grid.rows() > 1 && grid.pitchYMm() < size.heightMm() - TOLERANCE_MM) {
      refuse("labels-overlap", "pitch_y_mm: " + mm(grid.pitchYMm()), sheet);
    }
    if (sheet.stock() == Stock.TAPE && sheet.labels() > 1) {
      refuse("tape-of-one-label", "rows: " + grid.rows() + ", columns: " + grid.columns(), sheet);
    }
    checkParts(sheet);
    return sound;
  }

  private void checkParts(LabelSheet sheet) {
    LabelSheet.Parts parts = sheet.label();
    double width = parts.size().widthMm();
    double height = parts.size().heightMm();
    double neck = parts.neckMm().orElse(0);
    double printed = parts.printedHeightMm().orElse(height);
    double code = parts.codeMm().orElse(0);
    boolean wrap = parts.printedHeightMm().isPresent();
    double face = parts.neckMm().isPresent() ? (width - neck) / 2 : width;
    double room = Math.min(face, printed) - 2 * parts.edgeMm();
    if (room <= 0) {
      refuse("label-parts", "edge_mm: " + mm(parts.edgeMm()), sheet);
    }
    // A self-laminating label lies round the cable as a whole: neither a flag nor a code on it.
    if (wrap && (printed >= height || neck > 0 || code > 0)) {
      refuse("label-parts", "printed_height_mm: " + mm(printed), sheet);
    }
    if (code > room + TOLERANCE_MM) {
      refuse("label-parts", "code_mm: " + mm(code), sheet);
    }
    if ((sheet.purpose() == LabelKind.PORT_STRIPS) != parts.cells().isPresent()) {
      refuse("label-parts", "cells", sheet);
    }
    if (parts.neckMm().isPresent() && sheet.purpose() != LabelKind.CABLE_WRAPS) {
      refuse("label-parts", "neck_mm: " + mm(neck), sheet);
    }
  }

  private void refuse(String finding, String found, LabelSheet sheet) {
    sound = false;
    findings.add(Finding.of(Severity.ERROR, finding, at, "sheet", sheet.name()).found(found));
  }

  private static String mm(double value) {
    return String.format(Locale.ROOT, "%.1f mm", value);
  }
}
