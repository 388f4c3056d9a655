package wallbook.assess.wire;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static wallbook.assess.wire.WireJobs.between;
import static wallbook.assess.wire.WireJobs.run;
import static wallbook.assess.wire.WireJobs.zone;

import java.io.IOException;
import java.io.InputStreamReader;
import java.io.Reader;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.lowvoltage.LowVoltageAssessor;
import wallbook.assess.outdoor.OutdoorAssessor;
import wallbook.assess.speaker.SpeakerAssessor;
import wallbook.record.Job;
import wallbook.wording.Phrase;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;
import wallbook.wording.WordsFile;

/** The words of the wire, speaker, dc and outdoor parts, said over jobs that call for all. */
class WireWordsTest {
  private static final List<String> PARTS = List.of("wire", "speaker", "dc", "outdoor");
  private static final Pattern ARGUMENT = Pattern.compile("\\{([a-zA-Z]+)}");

  private static Map<String, String> words(String language) throws IOException {
    Map<String, String> all = new HashMap<>();
    for (String part : PARTS) {
      String name = "/templates/words/" + language + "/" + part + ".properties";
      try (Reader in =
          new InputStreamReader(
              Objects.requireNonNull(WireWordsTest.class.getResourceAsStream(name)),
              StandardCharsets.UTF_8)) {
        all.putAll(WordsFile.read(in));
      }
    }
    return all;
  }

  private static Map<String, TreeSet<String>> arguments(Map<String, String> words) {
    Map<String, TreeSet<String>> all = new TreeMap<>();
    words.forEach(
        (key, text) -> {
          TreeSet<String> names = new TreeSet<>();
          Matcher matcher = ARGUMENT.matcher(text);
          while (matcher.find()) {
            names.add(matcher.group(1));
          }
          all.put(key, names);
        });
    return all;
  }

  /** Jobs that between them call for every phrase. */
  private static List<Job> jobs() {
    List<Job> jobs = new ArrayList<>();
    String tests =
        """
        tests:
          - {id: t1, run: a, date: 2026-04-20, kind: resistance, result: pass, loop_resistance: 0.4 ohm}
          - {id: t2, run: b, date: 2026-04-20, kind: continuity, result: fail, reason: open}
        """;
    jobs.add(
        WireJobs.job(
            run("a", "s16-4", "left", ", length: 60 ft")
                + run("b", "unsaid", "right", ", length: 60 ft, length_by: estimate")
                + run("c", "speaker-16-2", "stub", "dark", ", length: 60 ft")
                + run("d", "speaker-14-4", "stub", "dark", ", length: 20 ft")
                + run("e", "gaugeless", "plate", "dark", "")
                + run("f", "s16-2", "plate", "damaged", "")
                + run("g", "s16-2", "plate", "abandoned", "")
                + run(
                    "h", "s16-2", "keypad", ", length: 100 ft, feed: {voltage: 12 V, current: 8 A}")
                + run(
                    "i",
                    "pair-unsaid",
                    "shade",
                    ", length: 9 ft, feed: {voltage: 72 V, current: 1 A}")
                + run("j", "s16-2", "gate", ", length: 9 ft, feed: {voltage: 12 V}")
                + run(
                    "k", "s22-2", "shade", ", length: 100 ft, feed: {voltage: 12 V, power: 40 W}"),
            """
            zones:
              - {id: z1, name: Music, kind: hi_fi, amplifier_damping: 200, speakers: [{run: a, impedance: 8 ohm}, {run: a, impedance: 8 ohm}]}
              - {id: z2, name: More, kind: surround_primary, speakers: [{run: b, impedance: 8 ohm, count: 2}, {place: right, impedance: 0 ohm}]}
            """
                + tests));
    jobs.add(
        WireJobs.job(
            run("up", "s16-4", "knob", ", length: 20 ft")
                + between("down", "s16-2", "knob", "left", ", length: 20 ft")
                + run("line", "s16-2", "plate", ", length: 20 ft"),
            """
            zones:
              - {id: z1, name: Music, kind: audio, volume_control: knob, speakers: [{run: down, impedance: 8 ohm}, {run: down, impedance: 8 ohm}, {impedance: 8 ohm}]}
              - {id: z2, name: Line, kind: landscape, line_voltage: 70.7 V, speakers: [{run: line, impedance: 8 ohm, power: 20 W}, {impedance: 8 ohm, power: 20 W}, {impedance: 8 ohm, power: 20 W}]}
            """));
    jobs.add(
        WireJobs.job(
            between("down", "s16-2", "knob", "left", ", length: 20 ft")
                + run("r", "s16-2", "right", ", length: 20 ft")
                + run("l", "s14-2", "plate", ", length: 20 ft")
                + run("short", "s14-2", "keypad", ", length: 5 ft"),
            """
            zones:
              - {id: z1, name: Music, kind: audio, volume_control: knob, speakers: [{run: down, impedance: 8 ohm}]}
              - {id: z2, name: Line, kind: landscape, line_voltage: 70.7 V, speakers: [{run: l, impedance: 8 ohm}]}
              - {id: z3, name: Front, kind: surround_primary, speakers: [{run: r, impedance: 8 ohm, conductors_in_parallel: 2}]}
            """));
    jobs.add(
        WireJobs.job(
            run("r", "s14-2", "left", ", length: 50 ft")
                + run("n", "s16-2", "right", ", length: 9 ft")
                + run("m", "s16-2", "plate", ", length: 100 ft"),
            """
            zones:
              - {id: z1, name: Front, kind: hi_fi, speakers: [{run: r, impedance: 8 ohm}]}
              - {id: z2, name: Back, kind: audio, speakers: [{run: n, impedance: 0 ohm}]}
              - {id: z3, name: Centre, kind: surround_primary, speakers: [{run: m, impedance: 8 ohm}]}
            """));
    jobs.add(
        WireJobs.job(
            run("a", "buriable", "stub", ", environments: [buried, outdoor_exposed]")
                + run("b", "wettable", "stub", ", environments: [outdoor_conduit, buried]")
                + run(
                    "c",
                    "sunproof",
                    "gate",
                    ", environments: [outdoor_exposed, outdoor_conduit], feed: {voltage: 48 V}")
                + run("d", "speaker-16-2", "gate", ", environments: [buried], conduits: [c1]")
                + run("e", "wettable", "plate", ", environments: [buried], conduits: [c1]"),
            """
            conduits: [{id: c1, label: C, name: Conduit, type: pvc_40, trade_size: "1", from: {head: rack}, to: {place: stub}, pull_string: both_ends, condition: clear}]
            stub_outs:
              - {id: so1, place: stub, cover: 6 in, line_still_to_lay: to the terrace}
              - {id: so2, place: gate, cover: 6 in}
              - {id: so3, place: stub}
            """));
    jobs.add(
        Jobs.read(
                """
                format: 1
                job: {id: small, title: Small, revision: 1, attic_high: 55 °C}
                floors: [{id: ground, name: Ground floor, level: 0, elevation: 0 ft}]
                spaces: [{id: den, name: Den, floor: ground, kind: living}]
                heads: [{id: rack, name: Rack, kind: rack, space: den, panels: []}]
                places: [{id: left, name: Left, space: den, kind: ceiling_point, use: speaker}]
                runs: [{id: r, label: R, cable: speaker-16-2, from: {head: rack, finish: terminated}, to: {place: left, finish: coiled}, condition: dark, length: 10 ft, environments: [attic]}]
                """)
            .job()
            .orElseThrow());
    jobs.add(
        WireJobs.job(
            run("r", "s16-2", "left", ", length: 9 ft"),
            zone(
                "audio",
                "",
                "{run: r, impedance: 8 ohm}, {impedance: 8 ohm}, {impedance: 8 ohm}")));
    return jobs;
  }

  private static Stream<Assessment> assessments() {
    return jobs().stream()
        .flatMap(
            job ->
                Stream.of(
                        new SpeakerAssessor(Jobs.TABLES).assess(job),
                        new LowVoltageAssessor(Jobs.TABLES).assess(job),
                        new OutdoorAssessor(Jobs.TABLES).assess(job))
                    .flatMap(List::stream));
  }

  private static Stream<Phrase> phrases(Assessment a) {
    return Stream.of(
            Stream.of(a.asked()),
            a.limitedBy().stream(),
            a.assumptions().stream(),
            a.missing().stream())
        .flatMap(s -> s);
  }

  private static Stream<String> keys(Phrase phrase) {
    return Stream.concat(
        Stream.of(phrase.key()),
        phrase.arguments().values().stream()
            .filter(Phrase.class::isInstance)
            .flatMap(inner -> keys((Phrase) inner)));
  }

  @Test
  void bothLanguagesHaveTheSameKeysAndArguments() throws IOException {
    assertEquals(arguments(words("en")), arguments(words("es")));
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyPhraseCanBeSaid(String language) throws IOException {
    for (UnitSystem units : UnitSystem.values()) {
      Wording wording = new Wording(Locale.forLanguageTag(language), words(language), units);
      assessments()
          .flatMap(WireWordsTest::phrases)
          .forEach(phrase -> assertFalse(wording.say(phrase).contains("{"), phrase.key()));
    }
  }

  @Test
  void everyWordIsCalledFor() throws IOException {
    TreeSet<String> said = new TreeSet<>();
    assessments().flatMap(WireWordsTest::phrases).flatMap(WireWordsTest::keys).forEach(said::add);
    TreeSet<String> unsaid = new TreeSet<>(words("en").keySet());
    unsaid.removeAll(said);
    assertEquals(new TreeSet<String>(), unsaid);
  }

  @Test
  void speakerLossReadsAsTheTradeSaysIt() throws IOException {
    Wording wording = new Wording(Locale.US, words("en"), UnitSystem.FEET_AND_INCHES);
    Assessment loss =
        WireJobs.only(
            WireJobs.speakers(
                run("r", "s16-2", "left", ", length: 75 ft"),
                zone("audio", "", "{run: r, impedance: 8 ohm, count: 2}")),
            "r",
            "speaker.loss.half-db");
    assertEquals(
        "level lost on the way to 2 speakers side by side, 4.00 Ω together, at most 0.50 dB",
        wording.say(loss.asked()).replace('\u00a0', ' '));
    assertEquals(
        "0.60 Ω of wire there and back against 2 speakers side by side, 4.00 Ω together",
        wording.say(loss.limitedBy().orElseThrow()).replace('\u00a0', ' '));
  }
}
