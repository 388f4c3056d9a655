package wallbook.fuzz;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.EnabledIfSystemProperty;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.yaml.snakeyaml.DumperOptions;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.representer.Representer;
import org.yaml.snakeyaml.resolver.Resolver;
import wallbook.AllWords;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.check.Checks;
import wallbook.compose.Composition;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.finding.Severity;
import wallbook.fuzz.Mutation.Change;
import wallbook.read.ReadResult;
import wallbook.record.Job;

/**
 * Sample records changed at random: reading, checking, assessing and composing report or go on, and
 * never stop. See docs/fuzzing.md for the long run by hand.
 */
class RecordFuzzTest {
  private static final Duration LONGEST = Duration.ofSeconds(5);
  private static final int FLATS_FOR_ONE_HOUSE = 99;
  private static final Checks CHECKS = new Checks(Jobs.TABLES);
  private static final Map<String, String> SAMPLES =
      Map.of("flat", text("flat"), "lakeside", text("lakeside"));
  private static final Map<String, Object> TREES =
      Map.of("flat", tree("flat"), "lakeside", tree("lakeside"));

  /** A mutated sample: which sample, its lines or its tree, and the changes. */
  record Attempt(String sample, boolean ofLines, List<Change> changes) {
    String yaml() {
      if (ofLines) {
        return Mutation.ofLines(SAMPLES.get(sample), changes);
      }
      Object tree = Mutation.copy(TREES.get(sample));
      Mutation.ofTree(tree, changes);
      return FlowYaml.of(tree);
    }
  }

  /** Takes every scalar for a text, as the record's own reader does. */
  private static final class TextsOnly extends Resolver {
    @Override
    protected void addImplicitResolvers() {
      addImplicitResolver(Tag.NULL, NULL, "~nN\0");
    }
  }

  private static String text(String sample) {
    try {
      return Files.readString(Path.of("sample-jobs", sample, "job.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  private static Object tree(String sample) {
    return Mutation.copy(loaded(text(sample)));
  }

  private static Object loaded(String yaml) {
    DumperOptions options = new DumperOptions();
    return new Yaml(
            new SafeConstructor(new LoaderOptions()),
            new Representer(options),
            options,
            new LoaderOptions(),
            new TextsOnly())
        .load(yaml);
  }

  @Provide
  Arbitrary<Attempt> attempts() {
    Arbitrary<Integer> any = Arbitraries.integers().between(0, 1_000_000).withoutEdgeCases();
    Arbitrary<Change> change = Combinators.combine(any, any, any).as(Change::new);
    Arbitrary<String> sample =
        Arbitraries.integers()
            .between(0, FLATS_FOR_ONE_HOUSE)
            .withoutEdgeCases()
            .map(i -> i == 0 ? "lakeside" : "flat");
    Arbitrary<Boolean> ofLines =
        Arbitraries.integers().between(0, 3).withoutEdgeCases().map(i -> i == 0);
    return Combinators.combine(sample, ofLines, change.list().ofMinSize(1).ofMaxSize(5))
        .as(Attempt::new);
  }

  @Property(tries = 300, shrinking = ShrinkingMode.OFF)
  void aMutatedRecordNeverStopsTheProgram(@ForAll("attempts") Attempt attempt) {
    go(attempt.yaml());
  }

  @ParameterizedTest
  @ValueSource(strings = {"flat", "lakeside"})
  void aTreeIsWrittenAsTheYamlLibraryReadsIt(String sample) {
    Object tree = Mutation.copy(TREES.get(sample));
    Mutation.ofTree(tree, Mutation.oddValues());

    assertEquals(tree, Mutation.copy(loaded(FlowYaml.of(tree))));
  }

  /** The long run: {@code mvn test -Dtest=RecordFuzzTest -Dfuzz.tries=1000000}. */
  @Test
  @EnabledIfSystemProperty(named = "fuzz.tries", matches = "\\d+")
  void aLongRunFindsNothing() {
    int tries = Integer.getInteger("fuzz.tries");
    Random dice = new Random();
    Map<String, Attempt> failures = new TreeMap<>();
    int whole = 0;
    for (int i = 0; i < tries; i++) {
      Attempt attempt = any(dice);
      long start = cpuNanos();
      try {
        whole += go(attempt.yaml()) ? 1 : 0;
      } catch (RuntimeException | Error e) {
        failures.putIfAbsent(e + " " + e.getStackTrace()[0], attempt);
      }
      Duration taken = Duration.ofNanos(cpuNanos() - start);
      if (taken.compareTo(LONGEST) > 0) {
        failures.putIfAbsent("slow", attempt);
      }
      if (i % 1000 == 999) {
        System.out.println((i + 1) + " tries, " + whole + " composed, failures: " + failures);
      }
    }
    assertEquals(Map.of(), failures);
  }

  private static Attempt any(Random dice) {
    List<Change> changes =
        Stream.generate(
                () -> new Change(any(dice, 1_000_000), any(dice, 1_000_000), any(dice, 1_000_000)))
            .limit(1 + any(dice, 5))
            .toList();
    String sample = any(dice, FLATS_FOR_ONE_HOUSE + 1) == 0 ? "lakeside" : "flat";
    return new Attempt(sample, any(dice, 4) == 0, changes);
  }

  private static int any(Random dice, int below) {
    return dice.nextInt(below);
  }

  /** Time that this thread has been at work; a busy machine does not count. */
  private static long cpuNanos() {
    return ManagementFactory.getThreadMXBean().getCurrentThreadCpuTime();
  }

  /** Takes a record as far as it goes; whether it came to documents. */
  private static boolean go(String yaml) {
    ReadResult result = Jobs.read(yaml);
    result.findings().forEach(AllWords::sayInEveryLanguage);
    if (result.job().isEmpty()) {
      result
          .soundPart()
          .ifPresent(part -> CHECKS.checkSoundPart(part).forEach(AllWords::sayInEveryLanguage));
      return false;
    }
    Job job = result.job().get();
    var findings = CHECKS.check(job);
    findings.forEach(AllWords::sayInEveryLanguage);
    if (findings.stream().anyMatch(f -> f.severity() == Severity.ERROR)) {
      return false;
    }
    Composition composition = Composed.of(job);
    for (DocumentPlan plan : Documents.all()) {
      plan.view().apply(composition);
    }
    return true;
  }
}
