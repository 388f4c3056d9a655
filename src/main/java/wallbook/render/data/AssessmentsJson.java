package wallbook.render.data;

import com.fasterxml.jackson.core.JsonGenerator;
import java.io.IOException;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.quantity.Quantity;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * Assessments as JSON: an array of objects with subject, topic, asked, verdict, value, limit,
 * margin, limitedBy, assumptions, conditions, missing, source and standing, in the reader's units
 * and language.
 */
public final class AssessmentsJson {
  private final Wording wording;

  public AssessmentsJson(Wording wording) {
    this.wording = wording;
  }

  /** The assessments in their order, as a file. */
  public byte[] bytes(List<Assessment> assessments) {
    return Json.bytes(
        json -> {
          json.writeStartArray();
          for (Assessment assessment : assessments) {
            write(assessment, json);
          }
          json.writeEndArray();
        });
  }

  private void write(Assessment assessment, JsonGenerator json) throws IOException {
    json.writeStartObject();
    json.writeStringField("subject", assessment.subject());
    json.writeStringField("topic", assessment.topic());
    json.writeStringField("asked", wording.say(assessment.asked()));
    json.writeStringField(
        "verdict", assessment.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-'));
    quantity("value", assessment.value(), json);
    quantity("limit", assessment.limit(), json);
    quantity("margin", assessment.margin(), json);
    if (assessment.limitedBy().isPresent()) {
      json.writeStringField("limitedBy", wording.say(assessment.limitedBy().get()));
    }
    phrases("assumptions", assessment.assumptions(), json);
    phrases("conditions", assessment.conditions(), json);
    phrases("missing", assessment.missing(), json);
    json.writeStringField("source", assessment.source().citation());
    json.writeStringField("standing", assessment.source().standing().text());
    json.writeEndObject();
  }

  private void quantity(String name, Optional<Quantity> quantity, JsonGenerator json)
      throws IOException {
    if (quantity.isPresent()) {
      json.writeStringField(name, wording.print(quantity.get()));
    }
  }

  private void phrases(String name, List<Phrase> phrases, JsonGenerator json) throws IOException {
    if (!phrases.isEmpty()) {
      json.writeArrayFieldStart(name);
      for (Phrase phrase : phrases) {
        json.writeString(wording.say(phrase));
      }
      json.writeEndArray();
    }
  }
}
