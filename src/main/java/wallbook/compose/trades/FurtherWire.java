package wallbook.compose.trades;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import wallbook.assess.Assessment;
import wallbook.record.Run;

/**
 * How much further the wire of a stub-out may go on, a line for each limit, with a length for each
 * gauge.
 */
final class FurtherWire {
  /** Topics as the speaker assessor names them, without the ones for doubled conductors. */
  private static final Pattern TOPIC =
      Pattern.compile("speaker\\.extend\\.([a-z0-9-]+)(?:\\.awg-(\\d+))?");

  private final TradeSheet sheet;

  FurtherWire(TradeSheet sheet) {
    this.sheet = sheet;
  }

  /** The lines; none where nothing was computed of the run. */
  List<String> of(Run run) {
    Map<String, List<String>> byLimit = new LinkedHashMap<>();
    List<String> lines = new ArrayList<>();
    for (Assessment a : sheet.assessments.of(run.id(), "speaker.extend.")) {
      Matcher topic = TOPIC.matcher(a.topic());
      if (!topic.matches()) {
        continue;
      }
      sheet.assume(a);
      String limit =
          sheet.say("landscaping.limit." + topic.group(1), "source", sheet.results.source(a));
      if (topic.group(2) == null) {
        String why = a.limitedBy().map(sheet.wording::say).orElseGet(sheet::notRecorded);
        lines.add(sheet.say("landscaping.further-none", "limit", limit, "why", why));
        continue;
      }
      byLimit
          .computeIfAbsent(limit, l -> new ArrayList<>())
          .add(
              sheet.say(
                  "landscaping.further",
                  "length",
                  a.value().map(sheet.wording::print).orElse(sheet.results.verdict(a.verdict())),
                  "awg",
                  topic.group(2)));
    }
    byLimit.forEach((limit, lengths) -> lines.add(limit + ": " + String.join("; ", lengths)));
    return lines;
  }
}
