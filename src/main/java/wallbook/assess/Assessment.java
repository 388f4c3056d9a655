package wallbook.assess;

import java.util.ArrayList;
import java.util.List;
import java.util.Objects;
import java.util.Optional;
import wallbook.quantity.Quantity;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * One computed answer about one thing. Never a bare yes: it carries value, limit, margin, what
 * limits it, what was assumed, and the source. Value, limit and margin are quantities of one kind;
 * a positive margin is always the good side, whatever the sign of the comparison.
 *
 * @param subject id in the record of what was assessed: a run, fibre, conduit, place or zone
 * @param topic stable name of the question, lower-case with dots and hyphens, for instance {@code
 *     pairs.ethernet.10gbase-t}; the first word is the medium
 * @param asked the question in words, for instance "10GBASE-T over this cable"
 * @param limitedBy the factor that decides, in words; absent only for {@link Verdict#INFORMATION}
 * @param assumptions what was taken for granted, in words
 * @param conditions what the answer hangs on, in words; not empty exactly for {@link
 *     Verdict#CONDITIONAL}. What is assumed without doubt is none of them
 * @param missing what the record would have to say; not empty exactly for {@link
 *     Verdict#NOT_STATED}
 * @param source of the limit or formula
 */
public record Assessment(
    String subject,
    String topic,
    Phrase asked,
    Verdict verdict,
    Optional<Quantity> value,
    Optional<Quantity> limit,
    Optional<Quantity> margin,
    Optional<Phrase> limitedBy,
    List<Phrase> assumptions,
    List<Phrase> conditions,
    List<Phrase> missing,
    Source source) {

  public Assessment {
    Objects.requireNonNull(subject);
    Objects.requireNonNull(asked);
    Objects.requireNonNull(source);
    assumptions = List.copyOf(assumptions);
    conditions = List.copyOf(conditions);
    missing = List.copyOf(missing);
    if ((verdict == Verdict.NOT_STATED) == missing.isEmpty()) {
      throw new IllegalArgumentException(topic + ": 'not stated' goes with what is missing");
    }
    if ((verdict == Verdict.CONDITIONAL) == conditions.isEmpty()) {
      throw new IllegalArgumentException(topic + ": 'conditional' goes with its conditions");
    }
    if (verdict != Verdict.INFORMATION && verdict != Verdict.NOT_STATED && limitedBy.isEmpty()) {
      throw new IllegalArgumentException(topic + ": a verdict without what limits it");
    }
  }

  /** Starts an assessment of one subject. */
  public static Builder of(String subject, String topic, Phrase asked) {
    return new Builder(subject, topic, asked);
  }

  /** Whether anything may be claimed on the strength of this assessment. */
  public boolean holds() {
    return verdict == Verdict.WITHIN || verdict == Verdict.CONDITIONAL;
  }

  /** Collects the parts of an assessment. */
  public static final class Builder {
    private final String subject;
    private final String topic;
    private final Phrase asked;
    private Optional<Quantity> value = Optional.empty();
    private Optional<Quantity> limit = Optional.empty();
    private Optional<Quantity> margin = Optional.empty();
    private Optional<Phrase> limitedBy = Optional.empty();
    private final List<Phrase> assumptions = new ArrayList<>();
    private final List<Phrase> conditions = new ArrayList<>();

    private Builder(String subject, String topic, Phrase asked) {
      this.subject = subject;
      this.topic = topic;
      this.asked = asked;
    }

    public Builder value(Quantity computed) {
      value = Optional.of(computed);
      return this;
    }

    /** The limit and the margin to it, positive on the good side. */
    public Builder limit(Quantity permitted, Quantity left) {
      limit = Optional.of(permitted);
      margin = Optional.of(left);
      return this;
    }

    public Builder limitedBy(Phrase factor) {
      limitedBy = Optional.of(factor);
      return this;
    }

    public Builder assuming(Phrase assumption) {
      assumptions.add(assumption);
      return this;
    }

    /** An assumption that a positive answer hangs on. */
    public Builder onlyIf(Phrase condition) {
      conditions.add(condition);
      return assuming(condition);
    }

    /** What a positive answer hangs on, where it is assumed already or said by what limits it. */
    public Builder hangingOn(List<Phrase> said) {
      conditions.addAll(said);
      return this;
    }

    /** What another assessment takes for granted, and what that hangs on. */
    public Builder restingOn(Assessment other) {
      assumptions.addAll(other.assumptions());
      conditions.addAll(other.conditions());
      return this;
    }

    /**
     * Ends the assessment. A conditional one for which no condition was named hangs on what limits
     * it.
     */
    public Assessment verdict(Verdict verdict, Source source) {
      List<Phrase> hangsOn =
          verdict != Verdict.CONDITIONAL
              ? List.of()
              : conditions.isEmpty() ? limitedBy.stream().toList() : conditions;
      return new Assessment(
          subject,
          topic,
          asked,
          verdict,
          value,
          limit,
          margin,
          limitedBy,
          assumptions,
          hangsOn,
          List.of(),
          source);
    }

    /** Nothing is stated, because the record lacks what the phrases name. */
    public Assessment notStated(List<Phrase> missing, Source source) {
      return new Assessment(
          subject,
          topic,
          asked,
          Verdict.NOT_STATED,
          Optional.empty(),
          limit,
          Optional.empty(),
          Optional.empty(),
          assumptions,
          List.of(),
          missing,
          source);
    }
  }
}
