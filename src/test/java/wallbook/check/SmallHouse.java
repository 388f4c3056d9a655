package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.Marked;
import wallbook.finding.Finding;
import wallbook.read.ReadResult;

/**
 * A record of one den, one utility room with a rack and a garden, to which a test adds a few lines.
 * The sign {@code ¶} in those lines marks where the finding is expected; it is taken out before the
 * record is read.
 */
final class SmallHouse {
  private static final Checks CHECKS = new Checks(Jobs.TABLES);

  private final Map<String, String> sections = new LinkedHashMap<>();

  private SmallHouse() {
    sections.put("job", "{id: small, title: Small job, revision: 1, invented: yes}");
    sections.put("floors", "- {id: ground, name: Ground, level: 0, elevation: 0 ft}");
    sections.put(
        "spaces",
        """
        - {id: den, name: Den, floor: ground, kind: living, ceiling_height: 9 ft, outline: [[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]]}
        - {id: util, name: Utility, floor: ground, kind: utility}
        - {id: garden, name: Garden, floor: ground, kind: garden}
        """);
    sections.put(
        "corners",
        """
        - {id: ne, name: north-east corner, at: [40 ft, 30 ft]}
        - {id: se, name: south-east corner, at: [40 ft, 0 ft]}
        - {id: sw, name: south-west corner, at: [0 ft, 0 ft]}
        """);
    sections.put(
        "heads",
        """
        - id: rack
          name: Rack
          kind: rack
          space: util
          panels:
            - {id: P1, name: Patch panel, kind: patch_panel, ports: 24}
            - {id: F1, name: Fibre tray, kind: fibre_tray, ports: 12}
            - {id: B1, name: Posts, kind: binding_posts, ports: 16}
        """);
    sections.put(
        "places",
        """
        - {id: d1, name: Plate one, space: den, kind: wall_plate, use: data, wall: A, offset: 3 ft, height: 18 in}
        - {id: d2, name: Plate two, space: den, kind: wall_plate, use: data, wall: B, offset: 3 ft, height: 18 in}
        """);
  }

  static SmallHouse house() {
    return new SmallHouse();
  }

  /** This house with a section of the record put in place of its own, if it has one. */
  SmallHouse with(String section, String... lines) {
    sections.put(section, String.join("\n", lines));
    return this;
  }

  /** One finding of the name stands in the report, at the mark. */
  Finding finds(String name) {
    List<Finding> findings = look();
    List<Finding> named = findings.stream().filter(f -> f.name().equals(name)).toList();
    assertEquals(1, named.size(), () -> "findings named " + name + " among " + shown(findings));
    assertEquals(new Marked(text()).position(), named.get(0).position().toString());
    return named.get(0);
  }

  void findsNo(String name) {
    List<Finding> findings = look();
    assertTrue(findings.stream().noneMatch(f -> f.name().equals(name)), () -> shown(findings));
  }

  /** All that is found; every finding is said in every language on the way. */
  List<Finding> look() {
    String text = new Marked(text()).text();
    ReadResult result = Jobs.read(text);
    assertTrue(result.job().isPresent(), () -> text + shown(result.findings()));
    List<Finding> findings = CHECKS.check(result.job().get());
    findings.forEach(AllWords::sayInEveryLanguage);
    return findings;
  }

  private String text() {
    StringBuilder text = new StringBuilder("format: 1\n");
    sections.forEach(
        (section, lines) -> text.append(section).append(":\n").append(lines.indent(2)));
    return text.toString();
  }

  private static String shown(List<Finding> findings) {
    return findings.stream()
        .map(f -> "\n" + f.position() + " " + f.name() + " " + f.found())
        .collect(Collectors.joining());
  }
}
