package wallbook.render.data;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.wording.Wording;

/**
 * Findings in the Static Analysis Results Interchange Format (OASIS SARIF 2.1.0), which editors and
 * code hosts show beside the line. Each kind of finding is a rule; its name is the rule's id.
 */
public final class SarifReport {
  private static final String SCHEMA =
      "https://docs.oasis-open.org/sarif/sarif/v2.1.0/errata01/os/schemas/sarif-schema-2.1.0.json";

  private final Wording wording;
  private final String version;

  /**
   * @param version version of this program
   */
  public SarifReport(Wording wording, String version) {
    this.wording = wording;
    this.version = version;
  }

  /** The report of one run over one or more records. */
  public String text(List<Finding> findings) {
    return Json.text(
        json -> {
          json.writeStartObject();
          json.writeStringField("$schema", SCHEMA);
          json.writeStringField("version", "2.1.0");
          json.writeArrayFieldStart("runs");
          json.writeStartObject();
          tool(findings, json);
          json.writeStringField("columnKind", "unicodeCodePoints");
          json.writeArrayFieldStart("results");
          for (Finding finding : findings) {
            result(finding, json);
          }
          json.writeEndArray();
          json.writeEndObject();
          json.writeEndArray();
          json.writeEndObject();
        });
  }

  private void tool(List<Finding> findings, JsonGenerator json) throws IOException {
    SortedMap<String, Finding> rules = new TreeMap<>();
    findings.forEach(f -> rules.putIfAbsent(f.name(), f));
    json.writeObjectFieldStart("tool");
    json.writeObjectFieldStart("driver");
    json.writeStringField("name", "wallbook");
    json.writeStringField("version", version);
    json.writeArrayFieldStart("rules");
    for (Finding rule : rules.values()) {
      json.writeStartObject();
      json.writeStringField("id", rule.name());
      json.writeObjectFieldStart("defaultConfiguration");
      json.writeStringField("level", level(rule.severity()));
      json.writeEndObject();
      json.writeEndObject();
    }
    json.writeEndArray();
    json.writeEndObject();
    json.writeEndObject();
  }

  private void result(Finding finding, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("ruleId", finding.name());
    json.writeStringField("level", level(finding.severity()));
    json.writeObjectFieldStart("message");
    json.writeStringField(
        "text", wording.say(finding.message()) + " " + wording.say(finding.remedy()));
    json.writeEndObject();
    json.writeArrayFieldStart("locations");
    json.writeStartObject();
    json.writeObjectFieldStart("physicalLocation");
    json.writeObjectFieldStart("artifactLocation");
    json.writeStringField("uri", Uris.relative(finding.position().file()));
    json.writeEndObject();
    json.writeObjectFieldStart("region");
    json.writeNumberField("startLine", finding.position().line());
    json.writeNumberField("startColumn", finding.position().column());
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndObject();
    json.writeEndArray();
    json.writeEndObject();
  }

  private static String level(Severity severity) {
    return switch (severity) {
      case ERROR -> "error";
      case WARNING -> "warning";
      case REMARK -> "note";
    };
  }
}
