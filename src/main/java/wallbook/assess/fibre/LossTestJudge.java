package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallbook.assess.Assessment;
import wallbook.assess.Clauses;
import wallbook.assess.Verdict;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/**
 * Holds the losses read with light source and power meter against the link's budget by each
 * edition: the worst reading of the latest test decides, whatever fibre and direction.
 */
final class LossTestJudge {
  /** What one edition allows, and the reading held against it. */
  private record Budgeted(LossEdition edition, LimitCheck check) {
    boolean holds() {
      return check.holds();
    }

    Phrase words() {
      return Phrase.of("fibre.by-budget", "by", edition.name(), "budget", check.limit());
    }
  }

  private final LinkLosses losses;
  private final TestMethods methods;

  LossTestJudge(Tables tables, LinkLosses losses) {
    this.losses = losses;
    methods = new TestMethods(tables);
  }

  /** One assessment for each test wavelength that was read at; none without a class of fibre. */
  List<Assessment> of(FibreLink link) {
    return link.fibreClass().stream()
        .flatMap(c -> methods.wavelengths(c.isSingleMode()).stream())
        .filter(wavelength -> !losses.latest(link, wavelength).isEmpty())
        .map(wavelength -> judge(link, link.fibreClass().orElseThrow(), wavelength))
        .toList();
  }

  private Assessment judge(FibreLink link, FibreClass fibreClass, Wavelength wavelength) {
    Assessment.Builder result =
        Assessment.of(
            link.id(),
            "fibre.test." + Math.round(wavelength.inNanometres()),
            Phrase.of("fibre.asked.test", "wavelength", wavelength));
    link.assume(result);
    Source method = methods.source(fibreClass.isSingleMode());
    List<Phrase> missing = new ArrayList<>();
    Optional<Reading> worst = losses.measured(link, wavelength);
    if (worst.isEmpty()) {
      missing.add(Phrase.of("fibre.missing.possible-reading"));
    }
    if (link.length().isEmpty()) {
      missing.add(Phrase.of("fibre.missing.length"));
    }
    if (!missing.isEmpty()) {
      return result.notStated(missing, method);
    }
    Reading reading = worst.orElseThrow();
    result.assuming(Phrase.of("fibre.assume.tested", "date", reading.test().date()));
    List<Budgeted> budgets =
        budgets(link, fibreClass, wavelength, reading.loss().loss(), link.length().orElseThrow());
    return compare(result, reading, budgets, method);
  }

  private List<Budgeted> budgets(
      FibreLink link, FibreClass fibreClass, Wavelength wavelength, Decibels loss, Length length) {
    List<Budgeted> budgets = new ArrayList<>();
    for (LossEdition edition : losses.editions()) {
      edition
          .budget(fibreClass, wavelength, length, link.joints())
          .map(most -> LimitCheck.loss(loss, most, edition.source(fibreClass, wavelength)))
          .ifPresent(check -> budgets.add(new Budgeted(edition, check)));
    }
    return budgets;
  }

  private static Assessment compare(
      Assessment.Builder result, Reading reading, List<Budgeted> budgets, Source method) {
    Budgeted headline = budgets.stream().filter(Budgeted::holds).findFirst().orElse(budgets.get(0));
    LimitCheck check = headline.check();
    boolean differ = budgets.stream().map(Budgeted::holds).distinct().count() > 1;
    result.assuming(Phrase.of("fibre.assume.budget", "by", headline.edition().name()));
    Decibels left = (Decibels) check.margin();
    Optional<Decibels> doubt =
        reading.test().accuracy().filter(a -> check.holds() && left.compareTo(a) < 0);
    doubt.ifPresent(a -> result.onlyIf(Phrase.of("fibre.assume.accuracy", "accuracy", a)));
    Phrase words =
        differ
            ? Phrase.of(
                "fibre.limit.budgets-differ",
                "loss",
                check.value(),
                "within",
                clauses(budgets, Budgeted::holds),
                "beyond",
                clauses(budgets, budgeted -> !budgeted.holds()))
            : check.words();
    if (differ) {
      result.hangingOn(List.of(words));
    }
    Verdict verdict =
        !check.holds()
            ? Verdict.BEYOND
            : differ || doubt.isPresent() ? Verdict.CONDITIONAL : Verdict.WITHIN;
    return result
        .value(check.value())
        .limit(check.limit(), check.margin())
        .limitedBy(words)
        .verdict(verdict, check.source().and(method));
  }

  private static Phrase clauses(List<Budgeted> budgets, Predicate<Budgeted> which) {
    return Clauses.joined(budgets.stream().filter(which).map(Budgeted::words).toList());
  }
}
