package wallbook.compose;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.PathPiece;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What is said of a conduit in several documents. */
public final class ConduitText {
  private final Job job;
  private final Wording wording;
  private final Describe describe;

  public ConduitText(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
  }

  /** Family and trade size. */
  public String size(Conduit conduit) {
    return say(
        "conduit-text.size", "type", describe.word(conduit.type()), "size", conduit.tradeSize());
  }

  /** How and when it was shown to be clear, or that it never was. */
  public String proof(Conduit conduit) {
    return conduit
        .proved()
        .map(
            proof ->
                proof
                    .size()
                    .map(
                        size ->
                            say(
                                "conduit-text.proved-to",
                                "by",
                                describe.word(proof.by()),
                                "size",
                                wording.quantities().dimension(size),
                                "date",
                                proof.date()))
                    .orElseGet(
                        () ->
                            say(
                                "conduit-text.proved",
                                "by",
                                describe.word(proof.by()),
                                "date",
                                proof.date())))
        .orElseGet(() -> wording.say("conduit-text.not-proved"));
  }

  /** Its straights, bends and pull boxes in order; nothing if they are not recorded. */
  public Optional<String> path(Conduit conduit) {
    return conduit.path().isEmpty()
        ? Optional.empty()
        : Optional.of(conduit.path().stream().map(this::piece).collect(Collectors.joining(" → ")));
  }

  private String piece(PathPiece piece) {
    if (piece.straight().isPresent()) {
      return wording.print(piece.straight().get());
    }
    if (piece.bend().isPresent()) {
      return piece
          .radius()
          .map(
              radius ->
                  say(
                      "conduit-text.bend-radius",
                      "angle",
                      piece.bend().get(),
                      "radius",
                      wording.quantities().position(radius)))
          .orElseGet(() -> say("conduit-text.bend", "angle", piece.bend().get()));
    }
    String box = piece.pullBox().orElseThrow();
    String name =
        job.places().stream()
            .filter(place -> place.id().equals(box))
            .map(place -> place.name())
            .findFirst()
            .orElse(box);
    return say("conduit-text.pull-box", "name", name);
  }

  /** What the record says beside, by name: length, condition, string, purpose, seal, note. */
  public List<FactView> facts(Conduit conduit) {
    List<FactView> facts = new ArrayList<>();
    fact(
        facts,
        "ends",
        say(
            "conduit-text.ends.value",
            "from",
            describe.end(conduit.from()),
            "to",
            describe.end(conduit.to())));
    conduit.from().note().ifPresent(note -> fact(facts, "from-end", note));
    conduit.to().note().ifPresent(note -> fact(facts, "to-end", note));
    fact(facts, "type", size(conduit));
    fact(
        facts,
        "length",
        conduit.length().map(wording::print).orElseGet(() -> wording.say("not-recorded")));
    fact(facts, "condition", describe.word(conduit.condition()));
    fact(facts, "proof", proof(conduit));
    fact(facts, "string", describe.word(conduit.pullString()));
    conduit.purpose().ifPresent(purpose -> fact(facts, "purpose", purpose));
    conduit.firestop().ifPresent(seal -> fact(facts, "firestop", seal));
    conduit.note().ifPresent(note -> fact(facts, "note", note));
    return List.copyOf(facts);
  }

  private void fact(List<FactView> facts, String name, String value) {
    facts.add(new FactView(wording.say("conduit-text." + name), value));
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
