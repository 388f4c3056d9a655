package wallbook.assess.outdoor;

import wallbook.quantity.Length;
import wallbook.quantity.Voltage;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/**
 * Least cover over a buried cable, from its top to finished grade (NEC table 300.5, as adopted
 * locally). The column for landscape lighting and irrigation control serves for wiring at 30 V or
 * less; above, the column for directly buried cable. The code does not call the table up for class
 * 2, class 3 and communications cable, so that for those the figure is an analogy.
 */
public final class BurialCover {
  private static final String LOW = "low-voltage";

  private final Table table;

  public BurialCover(Tables tables) {
    table = tables.table("burial-cover");
  }

  /** What lies above the cable. */
  public enum Surface {
    /** Ground of any kind that is named nowhere else. */
    GARDEN("garden"),
    /** At least 2 in of concrete over the trench. */
    CONCRETE("concrete"),
    /** The drive and parking of a one- or two-family dwelling. */
    DRIVEWAY("driveway"),
    /** Street, alley, public parking. */
    STREET("street");

    private final String word;

    Surface(String word) {
      this.word = word;
    }

    /** The word used in the table and in topics. */
    public String word() {
      return word;
    }
  }

  /**
   * A least cover with its source.
   *
   * @param lowVoltage whether it is that of wiring at 30 V or less
   */
  public record Least(Length cover, boolean lowVoltage, Source source) {}

  /**
   * Least cover of wiring at a voltage.
   *
   * @throws java.util.NoSuchElementException if the column for the voltage has no such row: 2 in of
   *     concrete over wiring above 30 V
   */
  public Least least(Voltage voltage, Surface surface) {
    double upToVolts = table.row(LOW, Surface.GARDEN.word()).number("up_to_v");
    boolean low = voltage.inVolts() <= upToVolts;
    Row row = table.row(low ? LOW : "direct-burial", surface.word());
    return new Least(Length.inches(row.number("cover_in")), low, row.source());
  }
}
