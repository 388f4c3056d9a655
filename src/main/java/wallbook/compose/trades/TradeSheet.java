package wallbook.compose.trades;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.compose.Composition;
import wallbook.compose.ConduitText;
import wallbook.compose.ContactView;
import wallbook.compose.Describe;
import wallbook.compose.Discretion;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.record.Conduit;
import wallbook.record.ConduitEnd;
import wallbook.record.Job;
import wallbook.record.PartyRole;
import wallbook.record.RunEnd;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** What the composers of trade sheets have in common: words, results, and what is left out. */
final class TradeSheet {
  static final String NONE = "—";

  final Job job;
  final Assessments assessments;
  final Wording wording;
  final Describe describe;
  final Discretion discretion;
  final ConduitText conduits;
  final SourceList sources = new SourceList();
  final Results results;
  private final Map<String, String> assumed = new LinkedHashMap<>();

  TradeSheet(Composition composition) {
    this.job = composition.job();
    this.assessments = composition.assessments();
    this.wording = composition.wording();
    this.describe = composition.describe();
    this.discretion = new Discretion(job, wording);
    this.conduits = new ConduitText(job, wording);
    this.results = new Results(wording, sources);
  }

  /** The head of a sheet, with the parties of the roles that its reader may have to call. */
  TradeHead head(Set<PartyRole> toCall) {
    List<ContactView> contacts =
        ContactView.of(job, wording, party -> toCall.contains(party.role())).stream()
            .map(this::withoutPrivateNote)
            .toList();
    return new TradeHead(job.facts().address(), rules(), contacts);
  }

  private ContactView withoutPrivateNote(ContactView contact) {
    return new ContactView(
        contact.role(),
        contact.name(),
        contact.phone(),
        contact.licence(),
        discretion.isTellable(contact.note()) ? contact.note() : "");
  }

  private Optional<String> rules() {
    List<String> parts = new ArrayList<>();
    job.facts()
        .jurisdiction()
        .ifPresent(
            authority -> parts.add(say("manual.cautions.jurisdiction", "authority", authority)));
    if (!job.facts().codes().isEmpty()) {
      parts.add(
          wording.say("manual.cautions.codes")
              + " "
              + String.join("; ", job.facts().codes())
              + ".");
    }
    return parts.isEmpty() ? Optional.empty() : Optional.of(String.join(" ", parts));
  }

  /** The answers to the questions that were asked, each in one line, in the order given. */
  List<String> lines(String subject, List<String> topics) {
    return topics.stream()
        .flatMap(topic -> assessments.find(subject, topic).stream())
        .map(this::line)
        .toList();
  }

  /** An answer in one line; what it takes for granted is kept for the foot of the sheet. */
  String line(Assessment assessment) {
    assume(assessment);
    return results.line(assessment);
  }

  /** Keeps what an answer takes for granted; of assumptions that differ in figures, the first. */
  void assume(Assessment assessment) {
    for (Phrase assumption : assessment.assumptions()) {
      assumed.putIfAbsent(assumption.key(), wording.say(assumption));
    }
  }

  /** What the answers given so far take for granted. */
  List<String> assumed() {
    return List.copyOf(assumed.values());
  }

  /** The question of an assessment that says everything in it, such as how to swing a tape. */
  Optional<String> said(String subject, String topic) {
    return assessments.find(subject, topic).map(Assessment::asked).map(wording::say);
  }

  /** Where an end of a run is, as far as this reader is told. */
  String end(RunEnd end) {
    return discretion.end(end, describe);
  }

  /** Where an end of a conduit is, as far as this reader is told. */
  String end(ConduitEnd end) {
    return discretion.end(end, describe);
  }

  /** The name of a conduit; its family and size if the name tells too much. */
  String name(Conduit conduit) {
    return discretion.isTellable(conduit.name()) ? conduit.name() : conduits.size(conduit);
  }

  String say(String key, Object... namesAndValues) {
    return wording.say(Phrase.of(key, namesAndValues));
  }

  String notRecorded() {
    return wording.say("not-recorded");
  }
}
