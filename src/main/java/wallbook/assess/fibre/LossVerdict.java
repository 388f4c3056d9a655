package wallbook.assess.fibre;

import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import wallbook.assess.Clauses;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * The loss of a link held against one limit in every way the loss is stated. Editions may come to
 * different verdicts; then the one that holds is the headline and the words name both sides.
 */
final class LossVerdict {
  /** One statement of the loss and how it compares. */
  private record Judged(LossCandidate candidate, LimitCheck check) {
    boolean holds() {
      return check.holds();
    }

    Phrase words() {
      return Phrase.of(
          "fibre.by-loss",
          "by",
          candidate.by(),
          "loss",
          candidate.loss(),
          "attenuation",
          candidate.attenuation());
    }
  }

  private final Decibels most;
  private final List<Judged> all;
  private final Optional<Judged> headline;

  private LossVerdict(Decibels most, List<Judged> all) {
    this.most = most;
    this.all = all;
    this.headline =
        all.stream().filter(Judged::holds).findFirst().or(() -> all.stream().findFirst());
  }

  /**
   * @param candidates none if the loss can't be stated
   * @param most limit of the loss
   * @param source of the limit
   */
  static LossVerdict of(List<LossCandidate> candidates, Decibels most, Source source) {
    return new LossVerdict(
        most,
        candidates.stream()
            .map(c -> new Judged(c, LimitCheck.loss(c.loss(), most, source.and(c.source()))))
            .toList());
  }

  /** Comparison of the headline statement; empty if the loss can't be stated. */
  Optional<LimitCheck> check() {
    return headline.map(Judged::check);
  }

  /** Edition or test behind the headline. */
  Optional<Phrase> by() {
    return headline.map(judged -> judged.candidate().by());
  }

  boolean fails() {
    return check().filter(check -> !check.holds()).isPresent();
  }

  /** Whether the limit holds by one edition and not by another. */
  boolean editionsDiffer() {
    return all.stream().map(Judged::holds).distinct().count() > 1;
  }

  /** The comparison in words; if the editions differ, with both sides. */
  Phrase words() {
    if (!editionsDiffer()) {
      return check().orElseThrow().words();
    }
    return Phrase.of(
        "fibre.limit.editions-differ",
        "most",
        most,
        "within",
        clauses(Judged::holds),
        "beyond",
        clauses(judged -> !judged.holds()));
  }

  /** The other statements of the loss, where they differ from the headline's but not in verdict. */
  List<Phrase> others() {
    if (editionsDiffer() || headline.isEmpty()) {
      return List.of();
    }
    Decibels shown = headline.get().candidate().loss();
    return all.stream()
        .filter(judged -> !judged.candidate().loss().equals(shown))
        .map(judged -> Phrase.of("fibre.assume.other-edition", "statement", judged.words()))
        .toList();
  }

  /**
   * Patch cords that still fit: within the given length, and within the loss left by every
   * statement that holds.
   */
  Length cordsWithin(Length lengthLeft) {
    return all.stream()
        .filter(Judged::holds)
        .map(judged -> judged.candidate().lengthFor((Decibels) judged.check().margin()))
        .reduce(lengthLeft, (one, other) -> one.compareTo(other) <= 0 ? one : other);
  }

  private Phrase clauses(Predicate<Judged> which) {
    return Clauses.joined(all.stream().filter(which).map(Judged::words).toList());
  }
}
