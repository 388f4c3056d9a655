package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import wallbook.assess.Assessment;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.ServiceFamily;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.Speech;
import wallbook.compose.guide.GuideView.ConduitChapter;
import wallbook.compose.guide.GuideView.ConduitRow;
import wallbook.compose.guide.GuideView.FitRow;
import wallbook.compose.guide.GuideView.FitTable;
import wallbook.compose.result.Results;
import wallbook.quantity.Quantity;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.Wording;

/** The conduits: their state, and what fits into each. */
final class Conduits {
  /** Conduits side by side in one table; more don't fit on a page. */
  private static final int MOST_COLUMNS = 10;

  /** What is asked of the pull: all that lies there, or one of a usual cable. */
  private static final List<String> PULLS =
      List.of("conduit.pull.contents.dry", "conduit.pull.cat6.dry");

  private final Composition composition;
  private final Job job;
  private final Outlook outlook;
  private final Wording wording;
  private final Describe describe;
  private final Speech words;
  private final Results results;

  Conduits(Composition composition, Results results) {
    this.composition = composition;
    this.job = composition.job();
    this.outlook = composition.outlook();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.words = new Speech(wording, describe);
    this.results = results;
  }

  /** The chapter, if the house has conduits. */
  Optional<ConduitChapter> chapter() {
    if (job.conduits().isEmpty()) {
      return Optional.empty();
    }
    List<FitTable> fits = new ArrayList<>();
    for (int from = 0; from < job.conduits().size(); from += MOST_COLUMNS) {
      int to = Math.min(from + MOST_COLUMNS, job.conduits().size());
      fits.add(fits(job.conduits().subList(from, to)));
    }
    return Optional.of(new ConduitChapter(job.conduits().stream().map(this::row).toList(), fits));
  }

  private ConduitRow row(Conduit conduit) {
    return new ConduitRow(
        conduit.label(),
        conduit.name(),
        words.say(
            "guide.ends", "from", describe.end(conduit.from()), "to", describe.end(conduit.to())),
        conduit.contents().isEmpty()
            ? wording.say("guide.conduit-empty")
            : String.join(", ", conduit.contents().stream().map(job::run).map(Run::label).toList()),
        composition
            .assessments()
            .find(conduit.id(), "conduit.clear")
            .map(this::answer)
            .orElse(Amounts.NONE),
        PULLS.stream()
            .flatMap(topic -> composition.assessments().find(conduit.id(), topic).stream())
            .findFirst()
            .map(this::pull)
            .orElse(Amounts.NONE),
        conduit.purpose().orElse(Amounts.NONE));
  }

  private String answer(Assessment assessment) {
    return words.say(
        "guide.answer",
        "verdict",
        words.answer(assessment.verdict()),
        "why",
        assessment.limitedBy().map(wording::say).orElse(Amounts.NONE));
  }

  private String pull(Assessment assessment) {
    if (assessment.value().isEmpty() || assessment.limit().isEmpty()) {
      return words.say(
          "guide.pull-not-stated", "missing", Speech.joined(words.say(assessment.missing())));
    }
    return words.say(
        "guide.pull",
        "value",
        assessment.value().get(),
        "limit",
        assessment.limit().get(),
        "reference",
        results.source(assessment));
  }

  private FitTable fits(List<Conduit> conduits) {
    return new FitTable(
        conduits.stream().map(Conduit::label).toList(),
        rows(conduits, ServiceFamily.CABLE),
        rows(conduits, ServiceFamily.CONNECTOR));
  }

  private List<FitRow> rows(List<Conduit> conduits, ServiceFamily family) {
    Map<String, Prospect> services = new LinkedHashMap<>();
    conduits.stream()
        .flatMap(conduit -> outlook.of(conduit.id()).stream())
        .filter(prospect -> prospect.family() == family)
        .sorted((a, b) -> Integer.compare(b.rank(), a.rank()))
        .forEach(prospect -> services.putIfAbsent(prospect.service(), prospect));
    return services.values().stream()
        .map(
            prospect ->
                new FitRow(
                    words.capital(wording.say(prospect.name())),
                    conduits.stream().map(c -> cell(c, prospect.service())).toList(),
                    references(conduits, prospect.service())))
        .toList();
  }

  /** The source that stands for a row, by rule: of all conduits the one that names most. */
  private String references(List<Conduit> conduits, String service) {
    Map<String, Assessment> byRule = new LinkedHashMap<>();
    conduits.stream()
        .flatMap(conduit -> outlook.find(conduit.id(), service).stream())
        .flatMap(prospect -> prospect.bases().stream())
        .forEach(basis -> byRule.merge(basis.topic(), basis, Conduits::namingMore));
    return byRule.values().stream()
        .map(results::source)
        .distinct()
        .collect(Collectors.joining(", "));
  }

  private static Assessment namingMore(Assessment a, Assessment b) {
    return b.source().citation().length() > a.source().citation().length() ? b : a;
  }

  private String cell(Conduit conduit, String service) {
    return outlook.find(conduit.id(), service).map(this::cell).orElse(Amounts.NONE);
  }

  /** How many by the stricter rule; a mark where the conduit's state makes it conditional. */
  private String cell(Prospect prospect) {
    Optional<String> count =
        prospect.family() == ServiceFamily.CABLE
            ? least(prospect.bases().stream()).map(wording::print)
            : Optional.empty();
    String key =
        "guide.fit." + prospect.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return count
        .filter(c -> prospect.possible())
        .map(c -> words.say(key + ".count", "count", c))
        .orElseGet(() -> wording.say(key));
  }

  private static Optional<Quantity> least(Stream<Assessment> bases) {
    return bases.flatMap(a -> a.value().stream()).min(Amounts::compare);
  }
}
