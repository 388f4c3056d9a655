package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaLocation;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;

/** The schema judged by an independent validator for JSON Schema 2020-12. */
class SchemaWriterTest {
  private static final SchemaRegistry REGISTRY =
      SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12);
  private static final Schema SCHEMA = REGISTRY.getSchema(SchemaWriter.schema());
  private static final String HEAD = "format: 1\njob: {id: s, title: S, revision: 1}\n";

  private static List<Error> errors(String yaml) {
    return SCHEMA.validate(yaml, InputFormat.YAML);
  }

  private static String place(String rest) {
    return HEAD
        + "places: [{id: p, name: P, space: s, kind: wall_plate, use: data, "
        + rest
        + "}]\n";
  }

  @Test
  void theSchemaIsItselfValid() {
    Schema meta =
        REGISTRY.getSchema(SchemaLocation.of("https://json-schema.org/draft/2020-12/schema"));
    assertEquals(List.of(), meta.validate(SchemaWriter.schema(), InputFormat.JSON));
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void soundSampleJobsAreValid(String job) throws IOException {
    assertEquals(List.of(), errors(Files.readString(Path.of("sample-jobs", job, "job.yaml"))));
  }

  @Test
  void theBrokenSampleJobIsNot() throws IOException {
    assertFalse(errors(Files.readString(Path.of("sample-jobs/broken/job.yaml"))).isEmpty());
  }

  @Test
  void theSmallestRecordIsValid() {
    assertEquals(List.of(), errors(HEAD));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "offset: 6 ft 2 in",
        "offset: 6' 2\"",
        "offset: 6 ft 2 1/2 in",
        "offset: 1-1/2 in",
        "offset: 3/4 in",
        "offset: 1880 mm",
        "offset: '1,880 mm'",
        "at: [10 ft, 7 ft]",
        "label: 12"
      })
  void whatTheReaderTakesIsValid(String rest) {
    assertEquals(List.of(), errors(place(rest)));
    assertTrue(
        Jobs.read(place(rest)).findings().stream()
            .allMatch(finding -> finding.name().equals("unknown-id")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "offset: 6",
        "offset: 6 kg",
        "offset: 6 ft in",
        "offset: about 6 ft",
        "at: [10 ft]",
        "at: 10 ft",
        "wal: A",
        "label: ''",
        "note: [a]"
      })
  void whatTheReaderRefusesIsNot(String rest) {
    assertFalse(errors(place(rest)).isEmpty());
    assertFalse(
        Jobs.read(place(rest)).findings().stream()
            .allMatch(finding -> finding.name().equals("unknown-id")));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "job: {id: s, title: S, revision: 1}",
        "format: 1",
        "format: 1\njob: {id: s, title: S, revision: one}",
        "format: 1\njob: {id: a b, title: S, revision: 1}",
        "format: 1\njob: {id: s, title: S, revision: 1, handover: 14 May 2026}",
        "format: 1\njob: {id: s, title: S, revision: 1, invented: perhaps}",
        "format: 1\njob: {id: s, title: S, revision: 1, paper: legal}"
      })
  void recordsWithMistakesOfFormAreNotValid(String yaml) {
    assertFalse(errors(yaml).isEmpty());
  }

  @Test
  void everyExampleIsValidByTheSchemaOfItsKey() throws IOException {
    JsonNode root = new ObjectMapper().readTree(SchemaWriter.schema());
    List<JsonNode> shapes = new ArrayList<>(List.of(root));
    root.get("$defs").forEach(shapes::add);
    int examples = 0;
    for (JsonNode shape : shapes) {
      for (JsonNode key : shape.path("properties")) {
        ObjectNode alone = key.deepCopy();
        alone.set("$defs", root.get("$defs"));
        for (JsonNode example : key.path("examples")) {
          examples++;
          assertEquals(List.of(), REGISTRY.getSchema(alone).validate(example), key::toString);
        }
      }
    }
    assertTrue(examples > 100);
  }

  @Test
  void anEndIsAtAPlaceOrAtAHead() {
    String start =
        HEAD
            + "runs: [{id: r, label: R, cable: cat6, condition: dark, from: {head: h, finish: cut}, to: {";
    assertEquals(List.of(), errors(start + "place: p, finish: cut}}]"));
    assertFalse(errors(start + "place: p, head: h, finish: cut}}]").isEmpty());
    assertFalse(errors(start + "finish: cut}}]").isEmpty());
  }
}
