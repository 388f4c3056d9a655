package wallbook.compose.page;

import java.util.List;
import java.util.Optional;

/**
 * A service that a cable or conduit could carry, or cannot.
 *
 * @param verdict the answer
 * @param brief the margin, or how many more of a cable fit
 * @param figures value, limit and margin, as far as there are any
 * @param notes numbers of the {@linkplain NoteView statements} that say what decides, what must be
 *     added, who may do it and where the limit comes from
 */
public record CarryView(
    String service,
    Sign verdict,
    Optional<String> brief,
    Optional<String> figures,
    List<String> notes) {
  public CarryView {
    notes = List.copyOf(notes);
  }
}
