package wallbook.compose.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import wallbook.compose.Describe;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.record.Proof;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.stock.LabelKind;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the labels of a job, in the order of the record, for one language. */
public final class LabelsComposer {
  private final Job job;
  private final Wording wording;
  private final Describe describe;
  private final Guarded guarded;
  private final EndForms ends;
  private final CodeText codes;

  public LabelsComposer(Job job, Wording wording) {
    this.job = job;
    this.wording = wording;
    this.describe = new Describe(job, wording);
    this.guarded = new Guarded(job, wording);
    this.ends = new EndForms(job, wording, guarded);
    this.codes = new CodeText(job.facts());
  }

  /**
   * All labels of a kind.
   *
   * @param cells most ports that one port strip is for
   */
  public List<Label> labels(LabelKind kind, int cells) {
    return List.copyOf(
        switch (kind) {
          case CABLE_WRAPS -> cableWraps();
          case PLATE_STRIPS -> new PlateStrips(job, wording, guarded, codes).strips();
          case PORT_STRIPS -> new PortStrips(job, wording, guarded, ends).strips(cells);
          case CONDUIT_TAGS -> conduitTags();
        });
  }

  /** Two for every cable, one for each end. */
  private List<CableWrap> cableWraps() {
    List<CableWrap> wraps = new ArrayList<>();
    for (Run run : job.runs()) {
      wraps.add(wrap(run, run.from(), run.to()));
      wraps.add(wrap(run, run.to(), run.from()));
    }
    return wraps;
  }

  private CableWrap wrap(Run run, RunEnd here, RunEnd there) {
    List<String> thisEnd = forms(run, here);
    List<String> otherEnd = forms(run, there);
    List<String> code =
        guarded.is(run) ? List.of(run.label()) : codes.of(run.label(), thisEnd, otherEnd);
    return new CableWrap(
        run.label(),
        thisEnd,
        otherEnd,
        code,
        describe.cable(run),
        job.cableOf(run).diameter(),
        Set.of(run.label(), run.id()),
        run.origin().position("label"));
  }

  private List<String> forms(Run run, RunEnd end) {
    return guarded.mayTell(run, end) ? ends.of(end) : List.of();
  }

  /** Two for every conduit, one for each end. */
  private List<ConduitTag> conduitTags() {
    List<ConduitTag> tags = new ArrayList<>();
    for (Conduit conduit : job.conduits()) {
      tags.add(tag(conduit, conduit.from(), conduit.to()));
      tags.add(tag(conduit, conduit.to(), conduit.from()));
    }
    return tags;
  }

  private ConduitTag tag(Conduit conduit, ConduitEnd here, ConduitEnd there) {
    List<String> thisEnd = ends.of(here);
    List<String> otherEnd = ends.of(there);
    String state = state(conduit);
    List<String> facts = new ArrayList<>();
    conduit.proved().ifPresent(proof -> facts.add(proof(proof)));
    facts.add(
        say(
            "label.conduit.type",
            "type",
            describe.word(conduit.type()),
            "size",
            conduit.tradeSize()));
    facts.add(say("label.conduit.string", "string", describe.word(conduit.pullString())));
    return new ConduitTag(
        conduit.label(),
        thisEnd,
        otherEnd,
        state,
        facts,
        codes.of(conduit.label(), thisEnd, otherEnd),
        Set.of(conduit.label(), conduit.id()),
        conduit.origin().position("label"));
  }

  private String state(Conduit conduit) {
    String condition = describe.word(conduit.condition());
    return conduit
        .proved()
        .map(p -> say("label.conduit.proved", "date", p.date(), "condition", condition))
        .orElseGet(() -> say("label.conduit.not-proved", "condition", condition));
  }

  private String proof(Proof proof) {
    String how = describe.word(proof.by());
    return proof
        .size()
        .map(s -> say("label.conduit.sized", "how", how, "size", wording.quantities().dimension(s)))
        .orElse(how);
  }

  private String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }
}
