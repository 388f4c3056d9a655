package wallbook.check;

import java.text.Normalizer;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/** What is printed on cables, conduits and plates. */
final class LabelChecks implements Check {
  /** What Code 128 (ISO/IEC 15417) encodes and every label printer has, without blanks at ends. */
  private static final Pattern PRINTABLE = Pattern.compile("[\\x21-\\x7e]+( [\\x21-\\x7e]+)*");

  private record Label(String text, SourcePosition at) {
    /** Labels that differ in capitals only are the same to somebody reading them in a closet. */
    String heard() {
      return text.toUpperCase(Locale.ROOT);
    }
  }

  private final int longest;

  LabelChecks(CheckFigures figures) {
    this.longest = figures.count("longest-label");
  }

  @Override
  public void look(Job job, Findings findings) {
    List<Label> onCables =
        Stream.concat(job.runs().stream().map(this::of), job.conduits().stream().map(this::of))
            .toList();
    List<Label> onPlates = job.places().stream().flatMap(p -> of(p).stream()).toList();
    findDuplicates(onCables, findings);
    findDuplicates(onPlates, findings);
    Stream.concat(onCables.stream(), onPlates.stream()).forEach(l -> checkForm(l, findings));
    Map<String, List<Run>> heard =
        job.runs().stream().collect(Collectors.groupingBy(run -> of(run).heard()));
    job.places().forEach(place -> comparePlate(job, heard, place, findings));
  }

  private Label of(Run run) {
    return new Label(run.label(), run.origin().position("label"));
  }

  private Label of(Conduit conduit) {
    return new Label(conduit.label(), conduit.origin().position("label"));
  }

  private Optional<Label> of(Place place) {
    return place.label().map(text -> new Label(text, place.origin().position("label")));
  }

  private static void findDuplicates(List<Label> labels, Findings findings) {
    Map<String, Label> first = new HashMap<>();
    for (Label label : labels) {
      Label earlier = first.putIfAbsent(label.heard(), label);
      if (earlier != null) {
        findings.add(
            Finding.of(
                    Severity.ERROR,
                    "duplicate-label",
                    label.at(),
                    "label",
                    label.text(),
                    "line",
                    earlier.at().line())
                .found(label.text()));
      }
    }
  }

  private void checkForm(Label label, Findings findings) {
    boolean fits = label.text().length() <= longest;
    if (fits && isPrintable(label.text())) {
      return;
    }
    findings.add(
        Finding.of(
                Severity.WARNING,
                "malformed-label",
                label.at(),
                "label",
                label.text(),
                "longest",
                longest)
            .found(label.text())
            .expecting(Phrase.of("expected.label", "longest", longest))
            .nearest(Optional.of(plain(label.text())).filter(p -> fits && isPrintable(p))));
  }

  private static boolean isPrintable(String text) {
    return PRINTABLE.matcher(text).matches();
  }

  /** The text without accents, and with single blanks. */
  private static String plain(String text) {
    if (isPrintable(text)) {
      return text;
    }
    return Normalizer.normalize(text, Normalizer.Form.NFD)
        .replaceAll("\\p{M}", "")
        .replaceAll("[\\u2010-\\u2015\\u2212]", "-")
        .replaceAll("\\s+", " ")
        .strip();
  }

  private void comparePlate(Job job, Map<String, List<Run>> heard, Place place, Findings findings) {
    of(place)
        .filter(
            plate -> job.runsAt(place).stream().noneMatch(r -> of(r).heard().equals(plate.heard())))
        .ifPresent(
            plate ->
                heard
                    .getOrDefault(plate.heard(), List.of())
                    .forEach(
                        run ->
                            findings.add(
                                Finding.of(
                                        Severity.WARNING,
                                        "plate-labelled-as-another-run",
                                        plate.at(),
                                        "label",
                                        plate.text(),
                                        "line",
                                        run.origin().position("label").line())
                                    .found(plate.text()))));
  }
}
