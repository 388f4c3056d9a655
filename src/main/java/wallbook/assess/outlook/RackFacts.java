package wallbook.assess.outlook;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.quantity.Length;
import wallbook.record.Head;
import wallbook.record.HeadKind;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;

/** What the record says of a rack that bears on moving it: how many cables, how little slack. */
final class RackFacts {
  private RackFacts() {}

  static List<Phrase> of(Job job) {
    List<Phrase> facts = new ArrayList<>();
    job.heads().stream()
        .filter(head -> head.kind() == HeadKind.RACK)
        .forEach(head -> facts.addAll(of(job, head)));
    return facts;
  }

  private static List<Phrase> of(Job job, Head head) {
    List<Optional<Length>> slacks =
        job.runsAt(head).stream().map(run -> slackAt(run, head)).toList();
    List<Phrase> facts = new ArrayList<>();
    facts.add(Phrase.counted("outlook.fact.rack-cables", slacks.size(), "rack", head.name()));
    slacks.stream()
        .flatMap(Optional::stream)
        .min(Length::compareTo)
        .map(least -> Phrase.of("outlook.fact.rack-slack", "rack", head.name(), "slack", least))
        .ifPresent(facts::add);
    int unknown = (int) slacks.stream().filter(Optional::isEmpty).count();
    if (unknown > 0) {
      facts.add(Phrase.counted("outlook.fact.rack-slack-unknown", unknown));
    }
    return facts;
  }

  private static Optional<Length> slackAt(Run run, Head head) {
    return Stream.of(run.from(), run.to())
        .filter(end -> Objects.equals(end.head(), Optional.of(head.id())))
        .findFirst()
        .flatMap(RunEnd::slack);
  }
}
