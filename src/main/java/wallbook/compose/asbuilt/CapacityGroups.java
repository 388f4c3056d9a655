package wallbook.compose.asbuilt;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.compose.asbuilt.CapacityView.Group;
import wallbook.compose.asbuilt.CapacityView.GroupRow;
import wallbook.compose.result.Extremes;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.Results;
import wallbook.quantity.Count;
import wallbook.quantity.DataRate;
import wallbook.quantity.Quantity;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * Puts runs with the same results together. Results are the same if question, verdict, what decides
 * and what is missing are; the figures shown are those of the run with the least margin, which is
 * named.
 */
final class CapacityGroups {
  private final Wording wording;
  private final Results results;
  private final RunText text;

  CapacityGroups(Wording wording, Results results, RunText text) {
    this.wording = wording;
    this.results = results;
    this.text = text;
  }

  /** A run with the results that it is grouped by. */
  record Item(Run run, List<Assessment> results) {}

  /** What makes results the same: everything but the figures of each run. */
  private record Sameness(
      String topic,
      Verdict verdict,
      Optional<String> decides,
      List<String> missing,
      Optional<Quantity> value) {
    static Sameness of(Assessment a) {
      return new Sameness(
          a.topic(),
          a.verdict(),
          a.limitedBy().map(Sameness::withoutFigures),
          a.missing().stream().map(Sameness::withoutFigures).toList(),
          a.value().filter(v -> v instanceof DataRate || v instanceof Count));
    }

    /** A phrase with its words and names, but without its quantities and dates. */
    private static String withoutFigures(Phrase phrase) {
      StringBuilder skeleton = new StringBuilder(phrase.key());
      new TreeMap<>(phrase.arguments())
          .forEach(
              (name, value) -> {
                if (value instanceof Phrase inner) {
                  skeleton.append(' ').append(withoutFigures(inner));
                } else if (value instanceof String) {
                  skeleton.append(' ').append(value);
                }
              });
      return skeleton.toString();
    }
  }

  /**
   * The groups, in the order of their first runs.
   *
   * @param letter what their codes begin with
   */
  Map<Group, List<Run>> of(String letter, List<Item> items) {
    Map<List<Sameness>, List<Item>> alike = new LinkedHashMap<>();
    for (Item item : items) {
      List<Sameness> key = item.results().stream().map(Sameness::of).toList();
      alike.computeIfAbsent(key, k -> new ArrayList<>()).add(item);
    }
    Map<Group, List<Run>> groups = new LinkedHashMap<>();
    alike
        .values()
        .forEach(
            members -> {
              Group group = group(letter + (groups.size() + 1), members);
              groups.put(group, members.stream().map(Item::run).toList());
            });
    return groups;
  }

  private Group group(String code, List<Item> members) {
    List<GroupRow> rows = new ArrayList<>();
    int questions = members.get(0).results().size();
    for (int i = 0; i < questions; i++) {
      rows.add(row(members, i));
    }
    Set<Phrase> common = new LinkedHashSet<>();
    Set<Phrase> all = new LinkedHashSet<>();
    members.get(0).results().forEach(a -> common.addAll(a.assumptions()));
    for (Item member : members) {
      Set<Phrase> its = new LinkedHashSet<>();
      member.results().forEach(a -> its.addAll(a.assumptions()));
      common.retainAll(its);
      all.addAll(its);
    }
    int varying = all.size() - common.size();
    return new Group(
        code,
        text.labels(members.stream().map(Item::run).toList()),
        rows,
        common.stream().map(wording::say).distinct().toList(),
        varying == 0
            ? Optional.empty()
            : Optional.of(wording.say(Phrase.counted("asbuilt.capacity.varying", varying))));
  }

  private GroupRow row(List<Item> members, int question) {
    List<Assessment> alike = members.stream().map(m -> m.results().get(question)).toList();
    Assessment shown = Extremes.leastMargin(alike).orElse(alike.get(0));
    ResultView view = results.view(shown);
    boolean hasMargin = shown.margin().isPresent();
    String at = members.get(alike.indexOf(shown)).run().label();
    return new GroupRow(
        view.asked(),
        view.verdict(),
        hasMargin ? view.value().orElse(RunText.NONE) : values(alike),
        view.limit().orElse(RunText.NONE),
        view.margin().orElse(RunText.NONE),
        hasMargin && members.size() > 1 ? at : RunText.NONE,
        decides(view),
        view.source());
  }

  /** The value of all, or the least and the greatest of them. */
  private String values(List<Assessment> alike) {
    Optional<Assessment> least = Extremes.least(alike);
    Optional<Assessment> greatest = Extremes.greatest(alike);
    if (least.isEmpty() || greatest.isEmpty()) {
      return RunText.NONE;
    }
    String from = wording.print(least.get().value().orElseThrow());
    String to = wording.print(greatest.get().value().orElseThrow());
    return from.equals(to)
        ? from
        : wording.say(Phrase.of("asbuilt.capacity.range", "from", from, "to", to));
  }

  /** What decides, or what the record lacks to say so. */
  static String decides(ResultView view) {
    return view.limitedBy().orElseGet(() -> String.join("; ", view.missing()));
  }
}
