package wallbook.assess;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/** All assessments of a job, by what they are about. Immutable. */
public final class Assessments {
  private final List<Assessment> all;
  private final Map<String, List<Assessment>> bySubject = new LinkedHashMap<>();

  /** Of what was asked for: most things are never asked about by topic. */
  private final Map<String, Map<String, Assessment>> byTopic = new ConcurrentHashMap<>();

  public Assessments(List<Assessment> all) {
    this.all = List.copyOf(all);
    // Neighbours are about the same thing more often than not.
    String last = null;
    List<Assessment> ofLast = List.of();
    for (Assessment assessment : this.all) {
      if (!assessment.subject().equals(last)) {
        last = assessment.subject();
        ofLast = bySubject.computeIfAbsent(last, s -> new ArrayList<>());
      }
      ofLast.add(assessment);
    }
    bySubject.replaceAll((subject, list) -> List.copyOf(list));
  }

  /** Every assessment in the order it was made. */
  public List<Assessment> all() {
    return all;
  }

  /** Those about one thing, by its id. */
  public List<Assessment> of(String subject) {
    return bySubject.getOrDefault(subject, List.of());
  }

  /** Those about one thing whose topic begins with the given words. */
  public List<Assessment> of(String subject, String topicPrefix) {
    return of(subject).stream().filter(a -> a.topic().startsWith(topicPrefix)).toList();
  }

  /** The one about one thing with exactly the given topic, if it was made. */
  public Optional<Assessment> find(String subject, String topic) {
    List<Assessment> about = bySubject.get(subject);
    if (about == null) {
      return Optional.empty();
    }
    Map<String, Assessment> known = byTopic.get(subject);
    if (known == null) {
      known = byTopic.computeIfAbsent(subject, s -> firstOfTopic(about));
    }
    return Optional.ofNullable(known.get(topic));
  }

  private static Map<String, Assessment> firstOfTopic(List<Assessment> assessments) {
    Map<String, Assessment> first = new HashMap<>();
    assessments.forEach(assessment -> first.putIfAbsent(assessment.topic(), assessment));
    return first;
  }
}
