package wallbook.assess.outlook;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.wording.Phrase;

/** What every cable and conduit of a house could carry later. Immutable. */
public final class Outlook {
  /** That of a job of which nothing was assessed. */
  public static final Outlook EMPTY = new Outlook(List.of());

  private final Map<String, OfThing> bySubject = new LinkedHashMap<>();

  /**
   * The outlook of one run or conduit.
   *
   * @param prospects in the order in which they are told
   * @param whyNothing why a run that could carry nothing could not
   */
  record OfThing(String subject, List<Prospect> prospects, List<Phrase> whyNothing) {}

  /**
   * @param things of each run and conduit one; of two with the same id the later
   */
  Outlook(List<OfThing> things) {
    things.forEach(thing -> bySubject.put(thing.subject(), thing));
  }

  /**
   * The prospects of a run or conduit: what it could carry first, the most useful before, then what
   * the equipment decides, what is not stated, and what it can't carry.
   */
  public List<Prospect> of(String subject) {
    OfThing thing = bySubject.get(subject);
    return thing == null ? List.of() : thing.prospects();
  }

  /** The prospect of one service, if it was looked at. */
  public Optional<Prospect> find(String subject, String service) {
    for (Prospect prospect : of(subject)) {
      if (prospect.service().equals(service)) {
        return Optional.of(prospect);
      }
    }
    return Optional.empty();
  }

  /** All prospects. */
  public List<Prospect> all() {
    return bySubject.values().stream().flatMap(thing -> thing.prospects().stream()).toList();
  }

  /** Why a run could carry nothing, in words; empty for one that could carry something. */
  public List<Phrase> whyNothing(String run) {
    OfThing thing = bySubject.get(run);
    return thing == null ? List.of() : thing.whyNothing();
  }
}
