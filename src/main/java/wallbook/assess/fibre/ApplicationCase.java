package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Clauses;
import wallbook.assess.Verdict;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.record.FibreClass;
import wallbook.record.RunTest;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.wording.Phrase;

/**
 * One link held against one application that its class of fibre carries: fibres, length, loss.
 *
 * @param test that the loss was measured in, if it was
 * @param usualCords patch cords that a channel is usually given
 */
record ApplicationCase(
    FibreLink link,
    FibreClass fibreClass,
    OpticalApplication application,
    OpticalReach reach,
    List<LossCandidate> losses,
    Optional<RunTest> test,
    Length usualCords,
    ApplicationNotes notes) {

  Assessment judge(Assessment.Builder result) {
    Optional<LimitCheck> fibres =
        link.fibres()
            .map(n -> LimitCheck.fibres(Count.of(n), application.fibres(), application.source()));
    Optional<LimitCheck> length =
        link.length().map(l -> LimitCheck.length(l, reach.reach(), source(reach.reachStanding())));
    LossVerdict loss = LossVerdict.of(losses, reach.loss(), source(reach.lossStanding()));
    List<LimitCheck> failed = new ArrayList<>();
    fibres.filter(check -> !check.holds()).ifPresent(failed::add);
    length.filter(check -> !check.holds()).ifPresent(failed::add);
    loss.check().filter(check -> !check.holds()).ifPresent(failed::add);
    boolean fibresAloneFail =
        failed.size() == 1 && fibres.filter(check -> !check.holds()).isPresent();
    if (!fibresAloneFail) {
      assume(result, loss);
    }
    if (!failed.isEmpty()) {
      return beyond(result, failed, loss);
    }
    List<Phrase> missing = new ArrayList<>();
    if (fibres.isEmpty()) {
      missing.add(Phrase.of("fibre.missing.count"));
    }
    if (length.isEmpty()) {
      missing.add(Phrase.of("fibre.missing.length"));
    }
    return missing.isEmpty()
        ? within(result, fibres.orElseThrow(), length.orElseThrow(), loss)
        : result.notStated(missing, application.source());
  }

  private Assessment beyond(Assessment.Builder result, List<LimitCheck> failed, LossVerdict loss) {
    LimitCheck first = failed.get(0);
    List<Phrase> words = new ArrayList<>(failed.stream().map(LimitCheck::words).toList());
    if (loss.fails()) {
      notes.joints(link, fibreClass, reach).ifPresent(words::add);
    }
    if (loss.editionsDiffer()) {
      words.add(loss.words());
    }
    return result
        .value(first.value())
        .limit(first.limit(), first.margin())
        .limitedBy(Clauses.joined(words))
        .verdict(Verdict.BEYOND, first.source());
  }

  private Assessment within(
      Assessment.Builder result, LimitCheck fibres, LimitCheck length, LossVerdict loss) {
    LimitCheck lossCheck = loss.check().orElseThrow();
    boolean lossDecides = loss.editionsDiffer() || lossCheck.share() <= length.share();
    LimitCheck first = lossDecides ? lossCheck : length;
    loss.others().forEach(result::assuming);
    if (reach.modeConditioning()) {
      result.onlyIf(Phrase.of("fibre.assume.mode-conditioning"));
    }
    notes.of(link, application, fibreClass).forEach(result::assuming);
    Length cords = loss.cordsWithin((Length) length.margin());
    boolean cordsFit = cords.ratioTo(usualCords) >= 1 - LimitCheck.ROUNDING;
    if (cordsFit) {
      result.assuming(Phrase.of("fibre.assume.cords", "cords", cords));
    } else {
      result.onlyIf(Phrase.of("fibre.assume.cords-short", "cords", cords));
    }
    Decibels lossLeft = (Decibels) lossCheck.margin();
    Optional<Decibels> doubt =
        test.flatMap(RunTest::accuracy).filter(within -> lossLeft.compareTo(within) < 0);
    doubt.ifPresent(
        within -> result.onlyIf(Phrase.of("fibre.assume.accuracy", "accuracy", within)));
    if (loss.editionsDiffer()) {
      result.hangingOn(List.of(loss.words()));
    }
    boolean plain =
        link.terminated()
            && !loss.editionsDiffer()
            && !reach.modeConditioning()
            && cordsFit
            && doubt.isEmpty();
    return result
        .value(first.value())
        .limit(first.limit(), first.margin())
        .limitedBy(
            Clauses.joined(
                lossDecides
                    ? List.of(loss.words(), length.words(), fibres.words())
                    : List.of(length.words(), loss.words(), fibres.words())))
        .verdict(
            plain ? Verdict.WITHIN : Verdict.CONDITIONAL, lossCheck.source().and(length.source()));
  }

  /** A measured loss holds the joints; a budget has them from the record or by assumption. */
  private void assume(Assessment.Builder result, LossVerdict loss) {
    link.assumeCable(result);
    if (test.isEmpty()) {
      link.jointNotes().forEach(result::assuming);
    }
    loss.by().ifPresent(by -> result.assuming(Phrase.of("fibre.assume.loss", "by", by)));
  }

  private Source source(Standing standing) {
    return new Source(application.source().citation(), standing);
  }
}
