package wallbook.compose.change;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import wallbook.compose.change.Change.FieldChange;
import wallbook.record.JobRecord;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunTest;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.record.Shape.Presence;
import wallbook.wording.Wording;

/** Compares two records of one house, thing by thing. */
public final class Comparison {
  private static final Set<String> WHERE =
      Set.of(
          "space", "wall", "offset", "height", "at", "depth", "place", "jack", "head", "panel",
          "port");
  private static final Set<String> CALLED = Set.of("label", "name", "title");
  private static final Set<String> ISSUE = Set.of("revision", "history");

  private final JobRecord before;
  private final JobRecord after;
  private final ThingFacts facts;

  private Comparison(JobRecord before, JobRecord after, Wording wording) {
    this.before = before;
    this.after = after;
    this.facts = new ThingFacts(wording);
  }

  /**
   * All changes, by sort and then in the order of the record. A thing may have several. The number
   * of the revision and its history are not among them.
   */
  public static List<Change> of(JobRecord before, JobRecord after, Wording wording) {
    return new Comparison(before, after, wording)
        .all()
        .sorted(Comparator.comparing(Change::sort))
        .toList();
  }

  private Stream<Change> all() {
    List<Change> changes = new ArrayList<>();
    changes.addAll(fields("job", "job", before.job(), after.job()));
    for (Field list : Shape.of(JobRecord.class).fields()) {
      if (list.presence() == Presence.LIST) {
        changes.addAll(list(list));
      }
    }
    return changes.stream();
  }

  private List<Change> list(Field list) {
    Map<String, Record> old = byKey(list, before);
    Map<String, Record> now = byKey(list, after);
    List<Change> changes = new ArrayList<>();
    Set<String> tested = new HashSet<>(before.tests().stream().map(RunTest::run).toList());
    now.forEach(
        (id, thing) -> {
          if (old.containsKey(id)) {
            changes.addAll(fields(list.key(), id, old.get(id), thing));
          } else if (thing instanceof RunTest test && tested.contains(test.run())) {
            changes.add(
                new Change(
                    ChangeSort.RETESTED, "runs", test.run(), nameOfRun(test.run()), outcome(test)));
          } else {
            changes.add(new Change(ChangeSort.ADDED, list.key(), id, name(thing, id), List.of()));
          }
        });
    old.forEach(
        (id, thing) -> {
          if (!now.containsKey(id)) {
            changes.add(new Change(ChangeSort.GONE, list.key(), id, name(thing, id), List.of()));
          }
        });
    return changes;
  }

  /** Changes of the values of one thing, parted by what they mean. */
  private List<Change> fields(String list, String id, Record old, Record now) {
    if (old.equals(now)) {
      return List.of();
    }
    Map<String, String> was = facts.of(old);
    Map<String, String> is = facts.of(now);
    Set<String> keys = new TreeSet<>(was.keySet());
    keys.addAll(is.keySet());
    Map<ChangeSort, List<FieldChange>> bySort = new LinkedHashMap<>();
    for (String key : keys) {
      String first = was.getOrDefault(key, "");
      String second = is.getOrDefault(key, "");
      boolean ofTheIssue = list.equals("job") && ISSUE.contains(key.split("\\.")[0]);
      if (!first.equals(second) && !ofTheIssue) {
        bySort
            .computeIfAbsent(sort(list, key, old, now), s -> new ArrayList<>())
            .add(new FieldChange(key, first, second));
      }
    }
    List<Change> changes = new ArrayList<>();
    bySort.forEach(
        (sort, fields) -> changes.add(new Change(sort, list, id, name(now, id), fields)));
    return changes;
  }

  private static ChangeSort sort(String list, String key, Record old, Record now) {
    String last = key.substring(key.lastIndexOf('.') + 1);
    if (key.equals("condition") && old instanceof Run first && now instanceof Run second) {
      return condition(first.condition(), second.condition());
    }
    boolean atPlace =
        list.equals("places")
            || list.equals("heads")
            || key.startsWith("from.")
            || key.startsWith("to.");
    if (atPlace && (WHERE.contains(last) || key.startsWith("ties."))) {
      return ChangeSort.MOVED;
    }
    return CALLED.contains(key) ? ChangeSort.RENAMED : ChangeSort.CHANGED;
  }

  private static ChangeSort condition(RunCondition old, RunCondition now) {
    if (old == RunCondition.DARK && now == RunCondition.IN_SERVICE) {
      return ChangeSort.LIT;
    }
    boolean givenUp = now == RunCondition.DAMAGED || now == RunCondition.ABANDONED;
    return givenUp ? ChangeSort.RETIRED : ChangeSort.CHANGED;
  }

  private List<FieldChange> outcome(RunTest test) {
    Map<String, String> now = facts.of(test);
    return Stream.of("date", "kind", "result")
        .map(key -> new FieldChange(key, "", now.get(key)))
        .toList();
  }

  private String nameOfRun(String id) {
    return after.runs().stream()
        .filter(r -> r.id().equals(id))
        .map(Run::label)
        .findFirst()
        .orElse(id);
  }

  private String name(Record thing, String id) {
    Map<String, String> said = facts.of(thing);
    if (thing instanceof RunTest test) {
      return nameOfRun(test.run()) + ", " + said.get("kind");
    }
    return Stream.of("label", "name", "title", "what", "caption")
        .filter(said::containsKey)
        .map(said::get)
        .findFirst()
        .orElse(id);
  }

  /** Things by id; those without one by the value that tells them apart. */
  private Map<String, Record> byKey(Field list, JobRecord record) {
    Map<String, Record> byKey = new LinkedHashMap<>();
    for (Object item : (List<?>) list.value(record)) {
      Record thing = (Record) item;
      Map<String, String> said = facts.of(thing);
      String key = said.containsKey("id") ? said.get("id") : said.values().iterator().next();
      if (list.key().equals("provisions")) {
        key = said.get("use") + ", " + said.get("group");
      }
      byKey.putIfAbsent(key, thing);
    }
    return byKey;
  }
}
