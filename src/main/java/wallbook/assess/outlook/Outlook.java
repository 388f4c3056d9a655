package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.wording.Phrase;

/** What every cable and conduit of a house could carry later. Immutable. */
public final class Outlook {
  /** That of a job of which nothing was assessed. */
  public static final Outlook EMPTY = new Outlook(List.of(), Map.of());

  private final Map<String, List<Prospect>> bySubject = new LinkedHashMap<>();
  private final Map<String, Map<String, Prospect>> byService = new HashMap<>();
  private final Map<String, List<Phrase>> carryingNothing;

  /**
   * @param carryingNothing why each run that could carry nothing could not
   */
  Outlook(List<Prospect> prospects, Map<String, List<Phrase>> carryingNothing) {
    for (Prospect prospect : prospects) {
      bySubject.computeIfAbsent(prospect.subject(), s -> new ArrayList<>()).add(prospect);
    }
    bySubject.replaceAll((subject, list) -> List.copyOf(list));
    bySubject.forEach(
        (subject, list) -> {
          Map<String, Prospect> first = new HashMap<>();
          list.forEach(prospect -> first.putIfAbsent(prospect.service(), prospect));
          byService.put(subject, first);
        });
    this.carryingNothing = Map.copyOf(carryingNothing);
  }

  /**
   * The prospects of a run or conduit: what it could carry first, the most useful before, then what
   * the equipment decides, what is not stated, and what it can't carry.
   */
  public List<Prospect> of(String subject) {
    return bySubject.getOrDefault(subject, List.of());
  }

  /** The prospect of one service, if it was looked at. */
  public Optional<Prospect> find(String subject, String service) {
    return Optional.ofNullable(byService.getOrDefault(subject, Map.of()).get(service));
  }

  /** All prospects. */
  public List<Prospect> all() {
    return bySubject.values().stream().flatMap(List::stream).toList();
  }

  /** Why a run could carry nothing, in words; empty for one that could carry something. */
  public List<Phrase> whyNothing(String run) {
    return carryingNothing.getOrDefault(run, List.of());
  }
}
