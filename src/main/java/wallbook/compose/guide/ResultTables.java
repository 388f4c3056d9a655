package wallbook.compose.guide;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Predicate;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.ServiceFamily;
import wallbook.assess.outlook.Worker;
import wallbook.compose.Composition;
import wallbook.compose.Describe;
import wallbook.compose.Letters;
import wallbook.compose.Speech;
import wallbook.compose.guide.GuideView.NeedRow;
import wallbook.compose.guide.GuideView.ResultTable;
import wallbook.compose.guide.GuideView.ServiceLine;
import wallbook.compose.result.Results;
import wallbook.quantity.Quantity;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Tells of like cables what they could carry, what they can't and why. */
final class ResultTables {
  private static final String CUSTOM = ".practice";

  /** A figure found a second way, for technicians; nothing is assumed by it. */
  private static final String CROSS_CHECK = "coax.assume.law";

  private final Composition composition;
  private final Wording wording;
  private final Describe describe;
  private final Speech words;
  private final Amounts amounts;
  private final Results results;

  ResultTables(Composition composition, Results results) {
    this.composition = composition;
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.words = new Speech(wording, describe);
    this.amounts = new Amounts(wording);
    this.results = results;
  }

  ResultTable table(int number, LikeCables like) {
    List<List<Prospect>> could = like.services().stream().filter(s -> hasLine(s.get(0))).toList();
    List<List<String>> assumptions = could.stream().map(this::assumptions).toList();
    Letters letters = new Letters(assumptions);
    List<ServiceLine> lines = new ArrayList<>();
    for (int i = 0; i < could.size(); i++) {
      lines.add(line(could.get(i), letters.of(assumptions.get(i))));
    }
    Run example = like.runs().get(0);
    return new ResultTable(
        number,
        describe.cable(example),
        describe.state(example),
        like.runs().stream().map(Run::label).toList(),
        amounts.range(like.runs().stream().map(r -> r.length().map(l -> (Quantity) l)).toList()),
        could.isEmpty() ? List.of() : words.say(could.get(0).get(0).first()),
        lines,
        because(like, p -> p.equipmentDecides() && !hasLine(p)),
        because(like, p -> p.verdict() == Verdict.BEYOND),
        because(like, p -> p.verdict() == Verdict.NOT_STATED),
        letters.always(),
        letters.lettered(),
        could.isEmpty() ? List.of() : remarks(like));
  }

  /** Whether a service has a line of figures; what only a data sheet knows is told apart. */
  private static boolean hasLine(Prospect prospect) {
    return prospect.possible()
        || (prospect.equipmentDecides() && prospect.decisive().value().isPresent());
  }

  private ServiceLine line(List<Prospect> like, String letters) {
    Prospect shown = LikeCables.leastMargin(like);
    return new ServiceLine(
        wording.say(shown.name()),
        verdict(shown),
        amounts.range(figures(like, Assessment::value)),
        amounts.range(figures(like, Assessment::limit)),
        amounts.range(figures(like, Assessment::margin), results::margin),
        shown.decisive().limitedBy().map(wording::say).orElse(Amounts.NONE),
        results.source(shown.decisive()),
        letters);
  }

  /** How far a line can go on is no question of equipment. */
  private String verdict(Prospect prospect) {
    return prospect.family() == ServiceFamily.EXTENSION && prospect.equipmentDecides()
        ? wording.say("guide.as-far-as")
        : words.answer(prospect.verdict());
  }

  /** What the services of tables need, those that need the same together. */
  List<NeedRow> needs(List<LikeCables> tables) {
    Map<String, Prospect> services = new LinkedHashMap<>();
    tables.stream()
        .flatMap(like -> like.services().stream())
        .map(like -> like.get(0))
        .filter(p -> p.possible() || p.equipmentDecides())
        .sorted(Comparator.comparing(Prospect::family))
        .forEach(p -> services.putIfAbsent(p.service(), p));
    Map<Need, List<String>> byNeed = new LinkedHashMap<>();
    services
        .values()
        .forEach(
            p ->
                byNeed
                    .computeIfAbsent(new Need(p.adds(), p.by()), n -> new ArrayList<>())
                    .add(wording.say(p.name())));
    return byNeed.entrySet().stream()
        .map(e -> need(e.getKey(), String.join("; ", e.getValue())))
        .toList();
  }

  private record Need(List<Phrase> adds, Worker by) {}

  private NeedRow need(Need need, String services) {
    return new NeedRow(
        words.capital(services),
        Speech.joined(words.say(need.adds())),
        words.who(List.of(need.by())));
  }

  private static List<Optional<Quantity>> figures(
      List<Prospect> like, Function<Assessment, Optional<Quantity>> which) {
    return like.stream().map(p -> which.apply(p.decisive())).toList();
  }

  private List<String> assumptions(List<Prospect> like) {
    return words.say(
        LikeCables.leastMargin(like).decisive().assumptions().stream()
            .filter(assumption -> !CROSS_CHECK.equals(assumption.key()))
            .toList());
  }

  /** Services that are told with a reason only, those of one reason together. */
  private List<String> because(LikeCables like, Predicate<Prospect> which) {
    Map<String, List<Prospect>> byReason = new LinkedHashMap<>();
    for (List<Prospect> prospects : like.services()) {
      Prospect shown = LikeCables.leastMargin(prospects);
      if (which.test(shown)) {
        String reason =
            shown
                .blocker()
                .or(() -> shown.decisive().limitedBy())
                .map(wording::say)
                .orElse(Amounts.NONE);
        byReason.computeIfAbsent(reason, r -> new ArrayList<>()).add(shown);
      }
    }
    List<String> lines = new ArrayList<>();
    byReason.forEach((reason, prospects) -> lines.add(because(reason, prospects)));
    return lines;
  }

  private String because(String reason, List<Prospect> prospects) {
    Set<String> references = new LinkedHashSet<>();
    prospects.forEach(p -> references.add(results.source(p.decisive())));
    return words.say(
        "guide.because",
        "services",
        String.join(", ", words.say(prospects.stream().map(Prospect::name).toList())),
        "reason",
        reason,
        "references",
        String.join(", ", references));
  }

  /** What the trade allows itself beside the standard, of the first cable that has it. */
  private List<String> remarks(LikeCables like) {
    Set<String> said = new LinkedHashSet<>();
    for (Run run : like.runs()) {
      composition.assessments().of(run.id()).stream()
          .filter(a -> a.topic().endsWith(CUSTOM) && a.limitedBy().isPresent())
          .forEach(
              a ->
                  said.add(
                      words.say(
                          "guide.custom",
                          "asked",
                          a.asked(),
                          "limit",
                          a.limitedBy().orElseThrow(),
                          "reference",
                          results.source(a))));
    }
    return List.copyOf(said);
  }
}
