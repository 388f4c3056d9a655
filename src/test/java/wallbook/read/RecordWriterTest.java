package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.Yaml;
import wallbook.Jobs;
import wallbook.record.JobRecord;

class RecordWriterTest {

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void aRecordReadsBackAsItWasWritten(String sample) {
    JobRecord record = Jobs.sample(sample).record();
    // Sweeps lie beside the record; the text is read where they are not.
    String text = RecordWriter.text(record).replaceAll("(?m)^ *sweep: .*\n", "");
    ReadResult again = Jobs.read(text);

    assertTrue(again.job().isPresent(), () -> again.findings().toString());
    assertEquals(
        RecordWriter.text(record).replaceAll("(?m)^ *sweep: .*\n", ""),
        RecordWriter.text(again.job().get().record()));
    assertEquals(record.runs(), again.job().get().record().runs());
    assertEquals(record.places(), again.job().get().record().places());
    assertEquals(record.conduits(), again.job().get().record().conduits());
  }

  /** SnakeYAML, an independent reader of YAML, must see the same text. */
  @ParameterizedTest
  @ValueSource(
      strings = {
        "plain",
        "yes",
        "null",
        "~",
        "1.0",
        "- x",
        "a: b",
        "#x",
        "a #b",
        "{x}",
        "[x]",
        "x, y",
        "\"q\"",
        "'q'",
        "two\nlines",
        "tab\tx",
        "ünï ½ Ω",
        " lead",
        "trail ",
        "&a",
        "*a",
        "!t",
        "%x",
        "@x",
        "`x`",
        "back\\slash",
        "\u2028",
        "😀",
        "=",
        "<<",
        "key:",
        "?"
      })
  void everyTextIsReadBackAsItself(String text) {
    Object read = new Yaml().load("[{key: " + YamlText.plainOrQuoted(text) + ", k2: x}]");

    String plain = YamlText.plainOrQuoted(text);
    if (plain.startsWith("\"")) {
      assertEquals("[{key=" + text + ", k2=x}]", read.toString());
    } else {
      assertEquals(text, plain);
    }
  }
}
