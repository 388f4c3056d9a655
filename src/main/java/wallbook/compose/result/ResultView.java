package wallbook.compose.result;

import java.util.List;
import java.util.Optional;

/**
 * One computed result in words.
 *
 * @param asked what was asked
 * @param verdict whether it is within its limit, in words
 * @param margin distance to the limit with its sign, plus on the good side
 * @param limitedBy what decides
 * @param missing what the record would have to say, where nothing could be stated
 * @param source number of its source in the document's list
 */
public record ResultView(
    String asked,
    String verdict,
    Optional<String> value,
    Optional<String> limit,
    Optional<String> margin,
    Optional<String> limitedBy,
    List<String> assumptions,
    List<String> missing,
    String source) {
  public ResultView {
    assumptions = List.copyOf(assumptions);
    missing = List.copyOf(missing);
  }
}
