package wallbook.check;

import java.util.ArrayList;
import java.util.List;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.ConduitEnd;
import wallbook.record.ConduitType;
import wallbook.record.Job;
import wallbook.record.ProofMethod;
import wallbook.record.Run;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** What a conduit says of itself, and what its runs say of it. */
final class ConduitChecks implements Check {
  private final Table necSizes;
  private final Table iecSizes;

  ConduitChecks(Tables tables) {
    this.necSizes = tables.table("conduit-bores-nec");
    this.iecSizes = tables.table("conduit-bores-iec");
  }

  @Override
  public void look(Job job, Findings findings) {
    for (Conduit conduit : job.conduits()) {
      compareContents(job, conduit, findings);
      checkEnds(conduit, findings);
      checkSize(conduit, findings);
      checkProof(conduit, findings);
    }
    job.runs().forEach(run -> compareConduits(job, run, findings));
  }

  private static void compareContents(Job job, Conduit conduit, Findings findings) {
    for (int i = 0; i < conduit.contents().size(); i++) {
      Run run = job.run(conduit.contents().get(i));
      if (!run.conduits().contains(conduit.id())) {
        findings.add(
            Finding.of(
                    Severity.ERROR,
                    "conduit-contents-disagree",
                    conduit.origin().position("contents", i),
                    "conduit",
                    conduit.label(),
                    "run",
                    run.label())
                .found(run.id()));
      }
    }
  }

  private static void compareConduits(Job job, Run run, Findings findings) {
    for (int i = 0; i < run.conduits().size(); i++) {
      Conduit conduit = job.conduit(run.conduits().get(i));
      if (!conduit.contents().contains(run.id())) {
        findings.add(
            Finding.of(
                    Severity.ERROR,
                    "run-not-in-conduit",
                    run.origin().position("conduits", i),
                    "conduit",
                    conduit.label(),
                    "run",
                    run.label())
                .found(conduit.id()));
      }
    }
  }

  private static void checkEnds(Conduit conduit, Findings findings) {
    ConduitEnd from = conduit.from();
    ConduitEnd to = conduit.to();
    boolean same =
        from.place().equals(to.place())
            && from.head().equals(to.head())
            && from.space().equals(to.space());
    if (same) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "conduit-ends-where-it-begins",
                  to.origin().position(),
                  "conduit",
                  conduit.label())
              .found(to.place().or(to::head).or(to::space).orElse("-")));
    }
  }

  private void checkSize(Conduit conduit, Findings findings) {
    List<String> sizes = sizes(conduit.type());
    if (conduit.bore().isPresent() || sizes.contains(plain(conduit.tradeSize()))) {
      return;
    }
    findings.add(
        Finding.of(
                Severity.WARNING,
                "unknown-trade-size",
                conduit.origin().position("trade_size"),
                "conduit",
                conduit.label(),
                "size",
                conduit.tradeSize(),
                "type",
                Words.of("conduit-type", conduit.type()))
            .found(conduit.tradeSize())
            .expecting(Phrase.of("expected.one-of", "choices", String.join(", ", sizes)))
            .nearest(Nearest.to(plain(conduit.tradeSize()), sizes)));
  }

  /** Sizes a family is made in: trade sizes first, then metric designators. */
  private List<String> sizes(ConduitType type) {
    if (type == ConduitType.IEC_PLIABLE || type == ConduitType.IEC_RIGID) {
      String construction = type == ConduitType.IEC_PLIABLE ? "pliable" : "rigid";
      return of(iecSizes, "construction", construction, "size");
    }
    String family = type.word().replace('_', '-');
    List<String> sizes = new ArrayList<>(of(necSizes, "family", family, "size"));
    sizes.addAll(of(necSizes, "family", family, "metric_designator"));
    return sizes;
  }

  private static List<String> of(Table table, String column, String value, String wanted) {
    return table.rows().stream()
        .filter(row -> row.text(column).equals(value))
        .map((Row row) -> row.text(wanted))
        .toList();
  }

  /** A size without its unit and with a hyphen between whole and fraction. */
  private static String plain(String size) {
    return size.strip().replaceFirst("\\s*(in|mm|\")$", "").replaceAll("\\s+", "-");
  }

  private static void checkProof(Conduit conduit, Findings findings) {
    boolean unfit =
        conduit.condition() == ConduitCondition.CRUSHED
            || conduit.condition() == ConduitCondition.BLOCKED;
    conduit
        .proved()
        .ifPresent(
            proof -> {
              if (unfit) {
                findings.add(
                    Finding.of(
                            Severity.WARNING,
                            "proved-conduit-not-clear",
                            conduit.origin().position("condition"),
                            "conduit",
                            conduit.label(),
                            "condition",
                            Words.of("conduit-condition", conduit.condition()),
                            "date",
                            proof.date())
                        .found(conduit.condition().word()));
              }
              boolean bySize = proof.by() == ProofMethod.MANDREL || proof.by() == ProofMethod.SLUG;
              if (bySize && proof.size().isEmpty()) {
                findings.add(
                    Finding.of(
                        Severity.REMARK,
                        "proof-without-size",
                        proof.origin().position("by"),
                        "conduit",
                        conduit.label()));
              }
            });
    if (unfit && conduit.spare().orElse(false) && conduit.note().isEmpty()) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "unfit-conduit-called-spare",
                  conduit.origin().position("condition"),
                  "conduit",
                  conduit.label(),
                  "condition",
                  Words.of("conduit-condition", conduit.condition()))
              .found(conduit.condition().word()));
    }
  }
}
