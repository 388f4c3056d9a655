package wallbook.assess.location;

import wallbook.quantity.Angle;
import wallbook.quantity.Length;
import wallbook.quantity.Ratio;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** Figures of the reference table {@code tie-practice}. */
final class TieFigures {
  private final Table table;

  TieFigures(Tables tables) {
    this.table = tables.table("tie-practice");
  }

  /** Standard error of one tie. */
  Length tapeError() {
    return Length.feet(value("tape-error"));
  }

  Angle leastAngle() {
    return Angle.degrees(value("least-angle"));
  }

  Angle largestAngle() {
    return Angle.degrees(value("largest-angle"));
  }

  /** Residual beyond which a tie is taken for a mistake. */
  Length largestResidual() {
    return tapeError().times(value("residual-tolerance"));
  }

  /** By how much two ties may miss each other: the errors of both. */
  Length slack() {
    return tapeError().times(2);
  }

  /** By how much a run may be recorded shorter than the straight line between its ends. */
  Length lengthTolerance() {
    return Length.feet(value("length-tolerance"));
  }

  /** Share by which a measured length may differ from the recorded one. */
  Ratio measuredTolerance() {
    return Ratio.percent(value("measured-length-tolerance"));
  }

  Source source(String figure) {
    return table.row(figure).source();
  }

  private double value(String figure) {
    return table.row(figure).number("value");
  }
}
