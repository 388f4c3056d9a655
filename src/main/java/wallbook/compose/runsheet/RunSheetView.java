package wallbook.compose.runsheet;

import java.util.List;
import java.util.Optional;
import wallbook.compose.FactView;
import wallbook.compose.TermView;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.SourceView;

/**
 * Everything known of one run, ready to show.
 *
 * @param facts what the record says, in the order a technician asks
 * @param tests tests of the run, the latest last
 * @param results what was computed, in the order it was made
 * @param always what is assumed for every result
 * @param assumptions what is assumed for some results, with the letter
 * @param outlook what the run could carry, the most useful first, then what it can't
 * @param sources in the order of their numbers
 */
public record RunSheetView(
    String label,
    String cable,
    List<FactView> facts,
    List<FactView> tests,
    List<Line> results,
    List<String> always,
    List<TermView> assumptions,
    List<Prospect> outlook,
    List<SourceView> sources) {

  /** A computed result and the letters of its assumptions. */
  public record Line(ResultView result, String letters) {}

  /**
   * Something the run could carry, or not.
   *
   * @param needs what must be done and added; why not, if it can't
   * @param who everyone who is needed; absent if it can't
   */
  public record Prospect(String service, String verdict, String needs, Optional<String> who) {}
}
