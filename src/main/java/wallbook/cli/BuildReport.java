package wallbook.cli;

import java.nio.file.Path;
import java.time.Duration;
import java.time.LocalTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.List;
import java.util.SortedSet;
import java.util.stream.Collectors;
import wallbook.compose.Disclosure;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.compose.disclosure.Recipient;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Tells what became of a build: why it was refused, or where the package is. */
final class BuildReport {
  private final Console console;
  private final Recipient recipient;
  private final boolean locked;

  /**
   * @param recipient who is to open the offline page
   * @param locked whether the annex is locked
   */
  BuildReport(Console console, Recipient recipient, boolean locked) {
    this.console = console;
    this.recipient = recipient;
    this.locked = locked;
  }

  /** Tells it to who has not seen the package yet. */
  void tellAll(HouseBuild.Built built) {
    tellFound(built);
    if (built.isStored()) {
      tellPackage(built);
      console.out().println(summary(built));
    }
  }

  /** Tells it to who has seen the package built before. */
  void tellAgain(HouseBuild.Built built, Duration taken) {
    tellFound(built);
    if (built.isStored()) {
      Wording wording = built.read().wording();
      String seconds = wording.quantities().number(taken.toMillis() / 1000.0, 1);
      Phrase again =
          Phrase.of(
              "build.again",
              "folder",
              built.outcome().stored().orElseThrow().folder(),
              "seconds",
              seconds,
              "summary",
              summary(built));
      console.out().println(wording.say(again));
    }
  }

  /** Tells that nothing will happen before the next save. */
  void tellWaiting(Wording wording) {
    LocalTime now = LocalTime.now(ZoneId.systemDefault()).truncatedTo(ChronoUnit.SECONDS);
    String time = DateTimeFormatter.ISO_LOCAL_TIME.format(now);
    console.out().println(say(wording, "build.waiting", "time", time));
  }

  /** Tells why a build came to no end. */
  void tellFailure(Exception failure) {
    console.err().println("wallbook: " + failure.getMessage());
  }

  private void tellFound(HouseBuild.Built built) {
    Wording wording = built.read().wording();
    FindingPrinter printer = new FindingPrinter(wording);
    printer.print(built.onSheets(), console.err());
    tellUnprintable(built.outcome().unprintable(), wording);
    if (built.isStored()) {
      printer.print(built.outcome().onLabels(), console.err());
    } else {
      printer.printRefusal(built.refusal(), console.err());
      console.err().println(wording.say("build.refused"));
    }
  }

  /** The record may hold a sign that the books' font doesn't. */
  private void tellUnprintable(SortedSet<Integer> characters, Wording wording) {
    if (!characters.isEmpty()) {
      String listed =
          characters.stream()
              .map(c -> "%s (U+%04X)".formatted(Character.toString(c), c))
              .collect(Collectors.joining(", "));
      console.err().println(say(wording, "build.unprintable", "characters", listed));
    }
  }

  private void tellPackage(HouseBuild.Built built) {
    Wording wording = built.read().wording();
    Path folder = built.outcome().stored().orElseThrow().folder();
    List<DocumentPlan> documents = Documents.all();
    tell(wording, "build.done", "folder", folder);
    tell(wording, "build.open", "file", folder.resolve(documents.get(0).file()));
    String others =
        documents.stream().skip(1).map(DocumentPlan::file).collect(Collectors.joining(", "));
    tell(wording, "build.also", "files", others);
    String page = recipient == Recipient.OWNER ? "build.page-owner" : "build.page";
    tell(wording, page, "file", folder.resolve(OfflinePage.FILE));
    if (!built.outcome().labelFiles().isEmpty()) {
      tell(wording, "build.labels", "files", String.join(", ", built.outcome().labelFiles()));
    }
    if (!locked && documents.stream().anyMatch(d -> d.disclosure() == Disclosure.OWNER_ALONE)) {
      console.out().println(wording.say("build.annex-open"));
    }
  }

  private static String summary(HouseBuild.Built built) {
    return new FindingPrinter(built.read().wording()).summary(built.read().reading().findings());
  }

  private void tell(Wording wording, String key, String name, Object value) {
    console.out().println(say(wording, key, name, value));
  }

  private static String say(Wording wording, String key, String name, Object value) {
    return wording.say(Phrase.of(key, name, value));
  }
}
