package wallbook.compose.labels;

import java.util.Set;
import wallbook.finding.SourcePosition;

/**
 * One label as it is stuck on. Texts that may be shortened come in forms, the fullest first; of
 * each the fullest that fits legibly is printed.
 */
public sealed interface Label permits CableWrap, PlateStrip, PortStrip, ConduitTag {
  /** What it is called when something is said about it. */
  String title();

  /** Labels and ids by which it can be asked for. */
  Set<String> names();

  /** Where the record says what stands on it. */
  SourcePosition at();
}
