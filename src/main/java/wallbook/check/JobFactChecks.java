package wallbook.check;

import java.util.IllformedLocaleException;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Floor;
import wallbook.record.Job;
import wallbook.record.JobFacts;
import wallbook.record.Party;
import wallbook.record.PartyRole;
import wallbook.wording.Phrase;

/** General facts of the job: who, when, by which codes, in which language, on which floors. */
final class JobFactChecks implements Check {
  private static final Set<PartyRole> LICENSED =
      Set.of(PartyRole.INTEGRATOR, PartyRole.ELECTRICIAN);

  @Override
  public void look(Job job, Findings findings) {
    JobFacts facts = job.facts();
    if (facts.handover().isEmpty()) {
      missing(Severity.WARNING, "handover-not-dated", facts, findings);
    }
    if (facts.codes().isEmpty()) {
      missing(Severity.REMARK, "codes-not-stated", facts, findings);
    }
    facts
        .extractFor()
        .ifPresent(
            reader ->
                findings.add(
                    Finding.of(
                        Severity.WARNING,
                        "record-is-an-extract",
                        facts.origin().position("extract_for"),
                        "reader",
                        reader)));
    checkParties(facts, findings);
    facts.language().ifPresent(tag -> checkLanguage(facts, tag, findings));
    checkFloors(job, findings);
  }

  private static void missing(Severity severity, String name, JobFacts facts, Findings findings) {
    findings.add(Finding.of(severity, name, facts.origin().position(), "job", facts.title()));
  }

  private static void checkParties(JobFacts facts, Findings findings) {
    for (Party party : facts.parties()) {
      if (LICENSED.contains(party.role()) && party.licence().isEmpty()) {
        add("licence-number-missing", party, findings);
      }
      if (party.role() == PartyRole.INTEGRATOR
          && party.phone().isEmpty()
          && party.email().isEmpty()) {
        add("integrator-out-of-reach", party, findings);
      }
    }
  }

  private static void add(String name, Party party, Findings findings) {
    findings.add(
        Finding.of(
            Severity.WARNING,
            name,
            party.origin().position(),
            "party",
            party.name(),
            "role",
            Words.of("party-role", party.role())));
  }

  private static void checkLanguage(JobFacts facts, String tag, Findings findings) {
    try {
      new Locale.Builder().setLanguageTag(tag);
    } catch (IllformedLocaleException e) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "malformed-language",
                  facts.origin().position("language"),
                  "language",
                  tag)
              .found(tag)
              .expecting(Phrase.of("expected.language"))
              .nearest(Optional.of(tag.replace('_', '-')).filter(t -> !t.equals(tag))));
    }
  }

  private static void checkFloors(Job job, Findings findings) {
    for (int i = 0; i < job.floors().size(); i++) {
      for (int j = 0; j < i; j++) {
        compare(job.floors().get(j), job.floors().get(i), findings);
      }
    }
  }

  private static void compare(Floor first, Floor second, Findings findings) {
    if (first.level() == second.level()) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "two-floors-on-one-level",
                  second.origin().position("level"),
                  "floor",
                  second.name(),
                  "other",
                  first.name())
              .found(Integer.toString(second.level())));
      return;
    }
    boolean higherLevel = second.level() > first.level();
    boolean higherFloor = second.elevation().compareTo(first.elevation()) > 0;
    boolean equal = second.elevation().equals(first.elevation());
    if (higherLevel != higherFloor && !equal) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "floors-out-of-order",
              second.origin().position("elevation"),
              "floor",
              second.name(),
              "other",
              first.name()));
    }
  }
}
