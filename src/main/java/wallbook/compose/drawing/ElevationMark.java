package wallbook.compose.drawing;

import java.util.List;
import java.util.Optional;

/**
 * A place on a wall seen from inside.
 *
 * @param offsetM from the left-hand corner to the centre of the plate, in metres
 * @param heightM from the finished floor to the centre of the plate, in metres
 * @param offsetText the offset as the reader sees it
 * @param heightText the height as the reader sees it
 * @param target where a touch leads
 */
public record ElevationMark(
    SymbolKind symbol,
    double offsetM,
    double heightM,
    String offsetText,
    String heightText,
    List<String> label,
    Optional<Target> target) {
  public ElevationMark {
    Values.notNegative("offsetM", offsetM);
    Values.notNegative("heightM", heightM);
    label = List.copyOf(label);
  }

  /** A mark that leads nowhere. */
  public ElevationMark(
      SymbolKind symbol,
      double offsetM,
      double heightM,
      String offsetText,
      String heightText,
      List<String> label) {
    this(symbol, offsetM, heightM, offsetText, heightText, label, Optional.empty());
  }
}
