package wallbook.assess.fibre;

import java.util.Locale;
import wallbook.quantity.Decibels;
import wallbook.quantity.PowerLevel;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Standing;

/**
 * A class of passive optical network by which a provider feeds a house over one single-mode fibre;
 * levels are those of the downstream direction.
 *
 * <p>The limits follow from the levels (ITU-T G.984.2, G.9807.1): most loss = least launch −
 * sensitivity − penalty; least loss = most launch − overload, or what the upstream direction asks
 * for if that is more, as in class C+.
 *
 * @param leastLoss path loss below which the home unit is overloaded
 * @param mostLoss path loss above which the home unit no longer receives
 * @param leastLaunch weakest light the provider sends
 * @param mostLaunch strongest light the provider sends
 * @param sensitivity weakest light the home unit receives
 * @param overload strongest light the home unit bears
 * @param penalty allowance for what the path does to the signal beside its loss
 * @param source of the loss limits
 */
public record PassiveNetworkClass(
    String name,
    Decibels leastLoss,
    Decibels mostLoss,
    PowerLevel leastLaunch,
    PowerLevel mostLaunch,
    PowerLevel sensitivity,
    PowerLevel overload,
    Decibels penalty,
    Source source) {

  static PassiveNetworkClass of(Row row) {
    return new PassiveNetworkClass(
        row.text("class"),
        Decibels.decibels(row.number("min_loss_db")),
        Decibels.decibels(row.number("max_loss_db")),
        PowerLevel.dbm(row.number("launch_min_dbm")),
        PowerLevel.dbm(row.number("launch_max_dbm")),
        PowerLevel.dbm(row.number("sensitivity_dbm")),
        PowerLevel.dbm(row.number("overload_dbm")),
        Decibels.decibels(row.number("penalty_db")),
        new Source(row.text("source"), Standing.of(row.text("limits_status"))));
  }

  /** What the rest of the path may lose once a part of it loses the given amount. */
  public Remaining after(Decibels part) {
    return new Remaining(leastLoss.minus(part), mostLoss.minus(part));
  }

  /**
   * Bounds on the loss of the rest of a path.
   *
   * @param least below which the home unit is overloaded; zero or less if nothing need be added
   * @param most above which the home unit no longer receives
   */
  public record Remaining(Decibels least, Decibels most) {}

  /** Topic of the assessments of this class. */
  public String topic() {
    return "fibre.pon." + name.toLowerCase(Locale.ROOT).replace("+", "-plus");
  }
}
