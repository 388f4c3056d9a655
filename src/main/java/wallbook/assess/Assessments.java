package wallbook.assess;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** All assessments of a job, by what they are about. Immutable. */
public final class Assessments {
  private final List<Assessment> all;
  private final Map<String, List<Assessment>> bySubject = new LinkedHashMap<>();
  private final Map<String, Map<String, Assessment>> byTopic = new HashMap<>();

  public Assessments(List<Assessment> all) {
    this.all = List.copyOf(all);
    for (Assessment assessment : this.all) {
      bySubject.computeIfAbsent(assessment.subject(), s -> new ArrayList<>()).add(assessment);
    }
    bySubject.replaceAll((subject, list) -> List.copyOf(list));
    bySubject.forEach((subject, list) -> byTopic.put(subject, firstOfTopic(list)));
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
    return Optional.ofNullable(byTopic.getOrDefault(subject, Map.of()).get(topic));
  }

  private static Map<String, Assessment> firstOfTopic(List<Assessment> assessments) {
    Map<String, Assessment> first = new HashMap<>();
    assessments.forEach(assessment -> first.putIfAbsent(assessment.topic(), assessment));
    return first;
  }
}
