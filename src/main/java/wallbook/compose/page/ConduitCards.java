package wallbook.compose.page;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.outlook.Outlook;
import wallbook.compose.ConduitText;
import wallbook.compose.FactView;
import wallbook.compose.disclosure.DisclosedJob;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.Job;
import wallbook.record.PathPiece;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Makes the cards of the conduits. */
final class ConduitCards {
  private final Job job;
  private final DisclosedJob disclosed;
  private final Outlook outlook;
  private final Wording wording;
  private final PageWords words;
  private final Carries carries;

  ConduitCards(
      DisclosedJob disclosed, Outlook outlook, Wording wording, PageWords words, Carries carries) {
    this.job = disclosed.job();
    this.disclosed = disclosed;
    this.outlook = outlook;
    this.wording = wording;
    this.words = words;
    this.carries = carries;
  }

  List<ConduitCard> all() {
    return job.conduits().stream().map(this::card).toList();
  }

  private ConduitCard card(Conduit conduit) {
    int hidden =
        (int)
            disclosed.whole().conduit(conduit.id()).contents().stream()
                .filter(disclosed.withheldRuns()::contains)
                .count();
    return new ConduitCard(
        words.anchors().of(conduit),
        conduit.label(),
        conduit.name(),
        state(conduit),
        Stream.of(conduit.from(), conduit.to()).map(words::end).toList(),
        facts(conduit),
        conduit.contents().stream().map(job::run).map(words::link).toList(),
        hidden == 0
            ? Optional.empty()
            : Optional.of(wording.say(Phrase.counted("page.conduit-withheld", hidden))),
        carries.of(outlook.of(conduit.id())),
        conduit.note());
  }

  private Sign state(Conduit conduit) {
    if (conduit.condition() == ConduitCondition.CRUSHED
        || conduit.condition() == ConduitCondition.BLOCKED) {
      return new Sign("dead", words.describe().word(conduit.condition()));
    }
    return conduit
        .proved()
        .map(p -> new Sign("works", words.say("conduit-proved", "date", p.date())))
        .orElseGet(() -> new Sign("unfinished", words.say("conduit-not-proved")));
  }

  private List<FactView> facts(Conduit conduit) {
    List<FactView> facts = new ArrayList<>();
    words.fact(facts, "size", Optional.of(new ConduitText(job, wording).size(conduit)));
    words.fact(facts, "length", conduit.length());
    words.fact(
        facts,
        "bends",
        Optional.of(
            (int)
                conduit.path().stream().map(PathPiece::bend).filter(Optional::isPresent).count()));
    words.fact(facts, "string", Optional.of(words.describe().word(conduit.pullString())));
    words.fact(facts, "proved-by", conduit.proved().map(p -> words.describe().word(p.by())));
    words.fact(facts, "purpose", conduit.purpose());
    words.fact(facts, "firestop", conduit.firestop());
    job.exceptions().stream()
        .filter(e -> e.conduit().equals(Optional.of(conduit.id())))
        .forEach(e -> words.fact(facts, "trouble", Optional.of(e.what())));
    return facts;
  }
}
