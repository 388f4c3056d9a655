package wallbook.compose;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.compose.disclosure.DisclosureRules;
import wallbook.compose.disclosure.Recipient;
import wallbook.record.ConduitEnd;
import wallbook.record.ExceptionItem;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.reference.Tables;
import wallbook.wording.Wording;

/**
 * What of a house is the owner's alone by the table {@code disclosure}: keypads, contacts, sensors,
 * repeaters and cameras, with their cables and the panel they come home to. Documents that leave
 * the household leave it out; a text of the record that names such a thing is withheld as a whole.
 */
public final class Discretion {
  private static final DisclosureRules RULES = new DisclosureRules(new Tables());

  private final Job job;
  private final NameSet names;

  /**
   * @param wording has the words that give a watching thing away, in the reader's language
   */
  public Discretion(Job job, Wording wording) {
    this.job = job;
    Stream<String> places =
        job.places().stream()
            .filter(this::isPrivate)
            .flatMap(place -> Stream.concat(Stream.of(place.name()), place.label().stream()));
    Stream<String> systems =
        job.systems().stream().filter(Discretion::isPrivate).map(HouseSystem::name);
    Stream<String> runs = job.runs().stream().filter(this::isPrivate).map(Run::label);
    Stream<String> words = Stream.of(wording.say("discretion.words").split("\\s*,\\s*"));
    this.names =
        new NameSet(
            Stream.of(places, systems, runs, words)
                .flatMap(s -> s)
                .map(name -> name.toLowerCase(Locale.ROOT))
                .toList());
  }

  /** Whether a system watches. */
  public static boolean isPrivate(HouseSystem system) {
    return !RULES.tells(Recipient.TRADE, system.kind());
  }

  /** Whether a place is one of a watching thing. */
  public boolean isPrivate(Place place) {
    return !RULES.tells(Recipient.TRADE, place.use());
  }

  /** Whether a run belongs to a watching system or ends at a watching thing. */
  public boolean isPrivate(Run run) {
    return run.system().map(job::system).filter(Discretion::isPrivate).isPresent()
        || Stream.of(run.from(), run.to())
            .flatMap(end -> end.place().stream())
            .map(job::place)
            .anyMatch(this::isPrivate);
  }

  /** Whether nothing but watching things comes home to a head. */
  public boolean isPrivate(Head head) {
    List<Run> runs = job.runsAt(head);
    return !runs.isEmpty() && runs.stream().allMatch(this::isPrivate);
  }

  /** Whether something that is not as promised concerns a watching thing. */
  public boolean isPrivate(ExceptionItem exception) {
    return exception.run().map(job::run).filter(this::isPrivate).isPresent()
        || exception.place().map(job::place).filter(this::isPrivate).isPresent()
        || exception.system().map(job::system).filter(Discretion::isPrivate).isPresent()
        || !isTellable(exception.what());
  }

  /** Where a conduit ends: of a watching thing and of a private head, only the space. */
  public String end(ConduitEnd end, Describe describe) {
    if (end.place().isPresent() && isPrivate(job.place(end.place().get()))) {
      return job.space(job.place(end.place().get()).space()).name();
    }
    if (end.head().isPresent() && isPrivate(job.head(end.head().get()))) {
      return job.space(job.head(end.head().get()).space()).name();
    }
    return describe.end(end);
  }

  /** Where a run ends: of a watching thing and of a private head, only the space. */
  public String end(RunEnd end, Describe describe) {
    boolean hidden =
        end.place().map(job::place).filter(this::isPrivate).isPresent()
            || end.head().map(job::head).filter(this::isPrivate).isPresent();
    return hidden ? job.spaceOf(end).name() : describe.shortEnd(end);
  }

  /** A text of the record, unless it names a watching thing. */
  public Optional<String> tellable(Optional<String> text) {
    return text.filter(this::isTellable);
  }

  /** Whether a text of the record names no watching thing. */
  public boolean isTellable(String text) {
    return !names.isNamedIn(text.toLowerCase(Locale.ROOT));
  }

  /** Labels of the runs that may be told, of those in a conduit or elsewhere. */
  public String labels(List<Run> runs, Wording wording) {
    return LabelRanges.of(
        runs.stream().filter(run -> !isPrivate(run)).map(Run::label).toList(), wording);
  }
}
