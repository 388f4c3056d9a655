package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.finding.Finding;
import wallbook.finding.Severity;
import wallbook.read.ReadResult;

/**
 * Slips of the pen in a sound record: lines lost, doubled, exchanged, indented or cut short.
 * Reading and checking report what they find and never stop the program.
 */
class MutatedRecordsTest {
  private static final List<String> LINES = lines();
  private static final Checks CHECKS = new Checks(Jobs.TABLES);

  /** One slip: what kind, at which line, and with what amount. */
  private record Slip(int kind, int line, int amount) {}

  private static List<String> lines() {
    try {
      return Files.readAllLines(Path.of("sample-jobs/flat/job.yaml"));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  @Property(tries = 150, shrinking = ShrinkingMode.OFF)
  void aRecordWithSlipsIsReportedOn(
      @ForAll @Size(min = 1, max = 4) List<@IntRange(max = 1_000_000) Integer> dice) {
    List<String> lines = new ArrayList<>(LINES);
    for (int die : dice) {
      apply(new Slip(die % 7, (die / 7) % lines.size(), die % 11), lines);
    }
    ReadResult result = Jobs.read(String.join("\n", lines));
    result.findings().forEach(AllWords::sayInEveryLanguage);
    result
        .job()
        .ifPresentOrElse(
            job -> {
              List<Finding> findings = CHECKS.check(job);
              findings.forEach(AllWords::sayInEveryLanguage);
              assertEquals(
                  findings.stream().filter(f -> f.severity() == Severity.ERROR).toList(),
                  CHECKS.errors(job));
            },
            () ->
                result
                    .soundPart()
                    .ifPresent(
                        part -> CHECKS.checkSoundPart(part).forEach(AllWords::sayInEveryLanguage)));
  }

  private static void apply(Slip slip, List<String> lines) {
    String line = lines.get(slip.line());
    switch (slip.kind()) {
      case 0 -> lines.remove(slip.line());
      case 1 -> lines.add(slip.line(), line);
      case 2 -> lines.set(slip.line(), line.substring(0, line.length() / 2));
      case 3 -> lines.set(slip.line(), " ".repeat(slip.amount() % 3) + line);
      case 4 -> lines.set(slip.line(), line.replaceAll("\\d+", Integer.toString(slip.amount())));
      case 5 -> lines.set(slip.line(), line.replaceFirst("[a-z]", "q"));
      default -> {
        String other = lines.get((slip.line() * 31 + slip.amount()) % lines.size());
        String[] value = other.split(": ", 2);
        lines.set(
            slip.line(),
            value.length == 2 && line.contains(": ")
                ? Arrays.asList(line.split(": ", 2)).get(0) + ": " + value[1]
                : other);
      }
    }
  }
}
