package wallbook.render.data;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;

/** Read back by a YAML library, for JSON is YAML (YAML 1.2.2, section 1.2). */
class AssessmentsJsonTest {
  private static final List<Assessment> COMPUTED = Composed.assess(Jobs.sample("lakeside")).all();

  @Test
  void eachAssessmentIsAnObjectInItsOrder() {
    List<Map<String, Object>> read = read();

    assertEquals(
        COMPUTED.stream().map(a -> a.subject() + " " + a.topic()).toList(),
        read.stream().map(o -> o.get("subject") + " " + o.get("topic")).toList());
  }

  @Test
  void theFieldsAreThoseOfTheHandbook() {
    Set<String> fields = new TreeSet<>();
    read().forEach(object -> fields.addAll(object.keySet()));

    assertEquals(
        Set.of(
            "subject",
            "topic",
            "asked",
            "verdict",
            "value",
            "limit",
            "margin",
            "limitedBy",
            "assumptions",
            "conditions",
            "missing",
            "source",
            "standing"),
        fields);
  }

  @Test
  void conditionalAnswersAndNoOthersHangOnSomething() {
    List<Map<String, Object>> read = read();

    assertTrue(COMPUTED.stream().anyMatch(a -> a.verdict() == Verdict.CONDITIONAL));
    for (Map<String, Object> object : read) {
      assertEquals(
          object.get("verdict").equals("conditional"),
          object.containsKey("conditions"),
          () -> object.toString());
    }
  }

  @SuppressWarnings("unchecked")
  private static List<Map<String, Object>> read() {
    byte[] json = new AssessmentsJson(Composed.WORDING).bytes(COMPUTED);
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(Integer.MAX_VALUE);
    return (List<Map<String, Object>>)
        new Yaml(options).load(new String(json, StandardCharsets.UTF_8));
  }
}
