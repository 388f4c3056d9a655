package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.Marked;
import wallbook.finding.Finding;
import wallbook.finding.Severity;

/** Every finding of reading one record: its name, at the place that the sign ¶ marks. */
class ReadFindingsTest {
  private static final String HEAD = "format: 1\njob: {id: s, title: S, revision: 1}\n";

  private static Finding finds(String name, String marked) {
    Marked record = new Marked(marked);
    ReadResult result = Jobs.read(record.text());
    result.findings().forEach(AllWords::sayInEveryLanguage);
    List<Finding> named = result.findings().stream().filter(f -> f.name().equals(name)).toList();
    assertEquals(1, named.size(), () -> shown(result));
    assertEquals(record.position(), named.get(0).position().toString());
    assertEquals(Severity.ERROR, named.get(0).severity());
    assertTrue(result.job().isEmpty());
    return named.get(0);
  }

  private static void isSound(String yaml) {
    ReadResult result = Jobs.read(yaml);
    assertTrue(result.job().isPresent(), () -> shown(result));
  }

  private static String shown(ReadResult result) {
    return result.findings().stream()
        .map(f -> f.position() + " " + f.name() + " " + f.found())
        .collect(Collectors.joining("\n"));
  }

  private static String space(String rest) {
    return HEAD
        + "floors: [{id: g, name: G, level: 0, elevation: 0 ft}]\nspaces:\n  - {id: den, name: Den, floor: g, kind: living, "
        + rest
        + "}\n";
  }

  @Test
  void anEmptyFileHasNoRecord() {
    finds("empty-record", "¶");
    finds("empty-record", "¶# only a comment\n");
  }

  @Test
  void brokenYamlIsReportedWhereItBreaks() {
    finds("yaml-syntax", "format: 1\njob: {id: s, title: S\nfloors¶: []\n");
    finds("yaml-syntax", "format: 1\n¶\tjob: x\n");
  }

  @Test
  void aCharacterThatNobodySeesIsForbidden() {
    finds("forbidden-character", "format: 1\njob: {id: s, title: A¶\u0007B, revision: 1}\n");
  }

  @Test
  void bytesOfAnotherEncodingAreReportedAtTheFirst() {
    byte[] bytes = "format: 1\njob: {title: Café".getBytes(StandardCharsets.ISO_8859_1);
    ReadResult result =
        new JobReader(Jobs.TABLES).read("job.yaml", bytes, new RecordFolder(Path.of(".")));

    assertEquals("not-utf-8", result.findings().get(0).name());
    assertEquals("job.yaml:2:17", result.findings().get(0).position().toString());
  }

  @Test
  void aByteOrderMarkIsNoMistake() {
    isSound("\ufeff" + HEAD);
  }

  @Test
  void aFileLargerThanAnyHouseIsRefused() {
    byte[] bytes = new byte[32 * 1024 * 1024 + 1];
    ReadResult result =
        new JobReader(Jobs.TABLES).read("job.yaml", bytes, new RecordFolder(Path.of(".")));
    assertEquals("record-too-large", result.findings().get(0).name());
  }

  @Test
  void aMisspeltKeyIsReportedWithTheNearest() {
    Finding finding = finds("unknown-key", space("¶ceilling_height: 9 ft"));
    assertEquals(Optional.of("ceiling_height"), finding.nearest());
  }

  @Test
  void aKeyStandsOnce() {
    // The parser lets a key stand twice; only the first would be kept.
    finds("duplicate-key", space("note: a, ¶note: b"));
  }

  @Test
  void aKeyThatMustBeThereIsMissed() {
    finds("missing-key", "format: 1\njob: ¶{id: s, revision: 1}\n");
    finds("missing-key", "format: 1\njob: {id: s, title: ¶null, revision: 1}\n");
  }

  @Test
  void ofKeysThatExcludeEachOtherOneIsGiven() {
    String conduit =
        HEAD
            + "heads: [{id: h, name: H, kind: rack, space: den}]\nfloors: [{id: g, name: G, level: 0, elevation: 0 ft}]\nspaces: [{id: den, name: D, floor: g, kind: hall}]\nconduits: [{id: c, label: C, name: C, type: emt, trade_size: 1, from: {space: den}, pull_string: none, condition: clear, to: ";
    Finding both = finds("not-exactly-one", conduit + "¶{space: den, head: h}}]\n");
    assertEquals(Optional.of("head, space"), both.found());

    Finding none = finds("not-exactly-one", conduit + "¶{note: nowhere}}]\n");
    assertEquals(Optional.of("-"), none.found());
    // Found by mutation: an end that is nowhere passed, and the checks of its place failed.
    finds("not-exactly-one", conduit + "¶{space: ~}}]\n");
    isSound(conduit + "{head: h}}]\n");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "openings: ¶none",
        "outline: [¶0 ft]",
        "outline: [¶[0 ft, 0 ft, 0 ft]]",
        "outline: [[0 ft, ¶[1 ft]]]",
        "name: ¶[a]",
        "openings: [¶door]"
      })
  void aValueHasTheFormOfItsKey(String rest) {
    String record = space(rest).replace("name: Den, floor", "floor");
    if (!rest.startsWith("name")) {
      record = space(rest);
    }
    finds("wrong-shape", record);
  }

  @Test
  void aRecordOfOneWordHasNoKeys() {
    finds("wrong-shape", "¶hello");
  }

  @Test
  void aTagIsForeignToARecord() {
    // A tag that asks for a class is already refused by the parser.
    finds("yaml-syntax", "format: 1\njob: {id: s, title: ¶!!java.net.URL x, revision: 1}\n");
    finds("foreign-tag", "format: 1\njob: ¶!house {id: s, title: S, revision: 1}\n");
  }

  @Test
  void aTextHasWords() {
    finds("blank-text", space("note: ¶'  '"));
  }

  @Test
  void aTextHasAnEnd() {
    isSound(space("note: " + "x".repeat(20_000)));
    finds("text-too-long", space("note: ¶" + "x".repeat(20_001)));
  }

  @Test
  void aTextIsPrintable() {
    finds("control-character", space("note: ¶\"a\\u0001b\""));
    isSound(space("note: \"a\\nb\\tc\""));
  }

  @ParameterizedTest
  @CsvSource(
      value = {
        "not-a-quantity | about 9 ft | ",
        "unit-missing | 9 | 9 ft / 9 m",
        "unit-unknown | 9 kg | 9 ft / 9 m",
        "unit-unknown | 9 feets | 9 ft / 9 m",
        "impossible-value | 1/0 in | "
      },
      delimiter = '|')
  void aQuantityHasANumberAndAUnitOfItsKind(String name, String text, String nearest) {
    Finding finding = finds(name, space("ceiling_height: ¶" + text));

    assertEquals(Optional.of(text), finding.found());
    assertEquals(Optional.ofNullable(nearest), finding.nearest());
  }

  @Test
  void nothingIsColderThanAbsoluteZero() {
    isSound("format: 1\njob: {id: s, title: S, revision: 1, attic_high: -459 °F}\n");
    finds(
        "impossible-value",
        "format: 1\njob: {id: s, title: S, revision: 1, attic_high: ¶-460 °F}\n");
  }

  @Test
  void aWordIsOneOfItsChoicesAndTheNearestIsNamed() {
    Finding finding = finds("unknown-word", space("note: x").replace("living", "¶livin"));
    assertEquals(Optional.of("living"), finding.nearest());
  }

  @Test
  void countsAreWholeNumbers() {
    finds("not-a-whole-number", "format: 1\njob: {id: s, title: S, revision: ¶1.5}\n");
  }

  @Test
  void numbersAreNumbers() {
    String zone = HEAD + "zones: [{id: z, name: Z, kind: audio, amplifier_damping: ";
    finds("not-a-number", zone + "¶high}]\n");
    finds("not-a-number", zone + "¶NaN}]\n");
    isSound(zone + "200.5}]\n");
  }

  @Test
  void yesAndNoAreTheAnswers() {
    String job = "format: 1\njob: {id: s, title: S, revision: 1, invented: ";
    finds("not-yes-or-no", job + "¶maybe}\n");
    Finding near = finds("not-yes-or-no", job + "¶yess}\n");
    assertEquals(Optional.of("yes"), near.nearest());
    isSound(job + "no}\n");
    isSound(job + "true}\n");
  }

  @Test
  void daysAreWrittenYearFirst() {
    String job = "format: 1\njob: {id: s, title: S, revision: 1, handover: ";
    finds("not-a-date", job + "¶14.05.2026}\n");
    finds("not-a-date", job + "¶2026-02-30}\n");
    isSound(job + "2028-02-29}\n");
  }

  @Test
  void anIdHasNoBlanks() {
    finds("malformed-id", space("note: x").replace("id: den", "id: ¶the den"));
    isSound(space("note: x").replace("id: den", "id: " + "d".repeat(64)));
    finds("malformed-id", space("note: x").replace("id: den", "id: ¶" + "d".repeat(65)));
  }

  @Test
  void anIdIsUniqueInTheWholeRecord() {
    finds("duplicate-id", space("note: x").replace("id: den", "id: ¶g"));
  }

  @Test
  void aReferenceNamesSomethingOfItsKind() {
    Finding finding = finds("unknown-id", space("note: x").replace("floor: g", "floor: ¶gg"));
    assertEquals(Optional.of("g"), finding.nearest());

    finds("unknown-id", space("note: x").replace("floor: g", "floor: ¶den"));
  }

  @Test
  void anotherFormatIsNotRead() {
    finds("unsupported-format", "format: ¶2\njob: {id: s, title: S, revision: 1}\n");
  }

  @Test
  void allMistakesAreReportedAtOnceAndInOrder() {
    ReadResult result =
        Jobs.read(space("ceiling_height: 9, colour: red").replace("kind: living", "kind: lounge"));

    assertEquals(
        List.of("unknown-word", "unit-missing", "unknown-key"),
        result.findings().stream().map(Finding::name).toList());
  }

  @Test
  void columnsCountCharactersAndNotBytes() {
    finds("unit-missing", space("note: Größe 🏠, ceiling_height: ¶9"));
  }

  @Test
  void theSoundPartLeavesOutWhatRefersToNothing() {
    String record =
        space("note: x")
            + "heads: [{id: h, name: H, kind: rack, space: den}, {id: h2, name: H, kind: rack, space: dem}]\n"
            + "photos: [{file: a.jpg, head: h2, stage: final, caption: C}]\n";
    ReadResult result = Jobs.read(record);

    assertTrue(result.job().isEmpty());
    assertEquals(1, result.soundPart().orElseThrow().heads().size());
    assertEquals(0, result.soundPart().orElseThrow().photos().size());
  }

  @Test
  void anAnchorThatHoldsItselfIsNoTrap() {
    ReadResult result = Jobs.read(HEAD + "spaces: &a [*a]\n");
    assertTrue(result.job().isEmpty());
  }

  @Test
  void aThousandAliasesAreRefused() {
    StringBuilder bomb = new StringBuilder("a: &a [x, x]\n");
    for (int i = 0; i < 12; i++) {
      bomb.append((char) ('b' + i)).append(": &").append((char) ('b' + i)).append(" [");
      for (int j = 0; j < 20; j++) {
        bomb.append(j == 0 ? "*" : ", *").append((char) ('a' + i));
      }
      bomb.append("]\n");
    }
    assertTrue(
        Jobs.read(bomb.toString()).findings().stream()
            .allMatch(f -> f.name().equals("yaml-syntax")));
  }

  @Test
  void deepNestingIsRefused() {
    ReadResult result = Jobs.read("format: " + "[".repeat(200) + "]".repeat(200));
    assertEquals("yaml-syntax", result.findings().get(0).name());
  }
}
