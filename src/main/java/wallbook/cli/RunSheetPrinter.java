package wallbook.cli;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.SourceView;
import wallbook.compose.runsheet.RunSheetView;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Prints the view of a run for a technician at a terminal. */
final class RunSheetPrinter {
  private final Wording wording;
  private final PrintWriter out;

  RunSheetPrinter(Wording wording, PrintWriter out) {
    this.wording = wording;
    this.out = out;
  }

  void print(RunSheetView sheet) {
    out.println(say("runsheet.title", "label", sheet.label(), "cable", sheet.cable()));
    Lines facts = new Lines(out, 2, 18);
    sheet.facts().forEach(fact -> facts.print(fact.name(), fact.value()));
    heading("tests");
    if (sheet.tests().isEmpty()) {
      facts.print("", wording.say("tested.not"));
    }
    sheet.tests().forEach(test -> facts.print(test.name(), test.value()));
    heading("results");
    Lines results = new Lines(out, 2, 24);
    sheet.results().forEach(line -> print(line, results));
    sheet.always().forEach(text -> results.print(wording.say("runsheet.always"), text));
    sheet.assumptions().forEach(text -> results.print(text.term(), text.meaning()));
    heading("outlook");
    sheet.outlook().forEach(prospect -> results.print(prospect.verdict(), said(prospect)));
    heading("sources");
    Lines sources = new Lines(out, 2, 7);
    for (SourceView source : sheet.sources()) {
      sources.print(
          source.number(),
          say("inquiry.source", "text", source.citation(), "how", source.standing()));
    }
  }

  private String said(RunSheetView.Prospect prospect) {
    String what =
        say("runsheet.prospect", "service", prospect.service(), "needs", prospect.needs());
    return prospect.who().map(who -> say("runsheet.by", "what", what, "who", who)).orElse(what);
  }

  private void print(RunSheetView.Line line, Lines lines) {
    ResultView result = line.result();
    List<String> parts = new ArrayList<>();
    result.value().ifPresent(parts::add);
    part("limit", result.limit()).ifPresent(parts::add);
    part("margin", result.margin()).ifPresent(parts::add);
    result.limitedBy().ifPresent(parts::add);
    if (!result.missing().isEmpty()) {
      parts.add(say("runsheet.missing", "text", String.join("; ", result.missing())));
    }
    lines.print(
        result.verdict(),
        say(
            "runsheet.result",
            "asked",
            result.asked(),
            "answer",
            String.join("; ", parts),
            "source",
            (result.source() + " " + line.letters()).strip()));
  }

  private Optional<String> part(String key, Optional<String> amount) {
    return amount.map(a -> say("runsheet." + key, "amount", a));
  }

  private void heading(String key) {
    out.println();
    out.println(wording.say("runsheet.heading." + key));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
