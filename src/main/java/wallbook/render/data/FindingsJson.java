package wallbook.render.data;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.wording.Wording;

/**
 * Findings as JSON: an array of objects with severity, name, file, line, column, message, remedy,
 * and found, expected and nearest where there are any.
 */
public final class FindingsJson {
  private final Wording wording;

  public FindingsJson(Wording wording) {
    this.wording = wording;
  }

  /** The findings in their order. */
  public String text(List<Finding> findings) {
    return new String(bytes(findings), StandardCharsets.UTF_8);
  }

  /** The same as a file. */
  public byte[] bytes(List<Finding> findings) {
    return Json.bytes(
        json -> {
          json.writeStartArray();
          for (Finding finding : findings) {
            write(finding, json);
          }
          json.writeEndArray();
        });
  }

  private void write(Finding finding, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("severity", finding.severity().name().toLowerCase(Locale.ROOT));
    json.writeStringField("name", finding.name());
    json.writeStringField("file", finding.position().file());
    json.writeNumberField("line", finding.position().line());
    json.writeNumberField("column", finding.position().column());
    json.writeStringField("message", wording.say(finding.message()));
    json.writeStringField("remedy", wording.say(finding.remedy()));
    write("found", finding.found(), json);
    write("expected", finding.expected().map(wording::say), json);
    write("nearest", finding.nearest(), json);
    json.writeEndObject();
  }

  private static void write(String name, Optional<String> value, JsonGenerator json)
      throws IOException {
    if (value.isPresent()) {
      json.writeStringField(name, value.get());
    }
  }
}
