package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** What every cable and conduit of a house could carry later. Immutable. */
public final class Outlook {
  private final Map<String, List<Prospect>> bySubject = new LinkedHashMap<>();

  Outlook(List<Prospect> prospects) {
    for (Prospect prospect : prospects) {
      bySubject.computeIfAbsent(prospect.subject(), s -> new ArrayList<>()).add(prospect);
    }
    bySubject.replaceAll((subject, list) -> List.copyOf(list));
  }

  /**
   * The prospects of a run or conduit: what it could carry first, the most useful before, then what
   * it can't.
   */
  public List<Prospect> of(String subject) {
    return bySubject.getOrDefault(subject, List.of());
  }

  /** All prospects. */
  public List<Prospect> all() {
    return bySubject.values().stream().flatMap(List::stream).toList();
  }
}
