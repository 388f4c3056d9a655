package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.quantity.Voltage;
import wallbook.reference.Row;
import wallbook.reference.Source;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses what else four pairs can serve: serial lines, telephone, contacts, control, video. */
final class UsesAssessor {
  private final List<Use> uses;
  private final PairLoop loops;
  private final List<String> allPairs;

  UsesAssessor(Tables tables) {
    uses = tables.table("pair-uses").rows().stream().map(Use::of).toList();
    loops = new PairLoop(tables);
    allPairs = new WireMap(tables).pairs();
  }

  /**
   * A use of the table {@code pair-uses}.
   *
   * @param topic of its assessments, which is the key of its words too
   * @param limitedBy what decides, with the length that the trade commonly keeps to where the table
   *     has one
   */
  private record Use(Row row, String topic, String basis, Phrase limitedBy) {
    static Use of(Row row) {
      String topic = "pairs.use." + row.text("use");
      Phrase limitedBy =
          row.numberIfAny("common_m").stream()
              .mapToObj(metres -> Phrase.of(topic + ".limit", "common", Length.metres(metres)))
              .findFirst()
              .orElse(Phrase.of(topic + ".limit"));
      return new Use(row, topic, row.text("basis"), limitedBy);
    }

    Source source() {
      return row.source();
    }
  }

  List<Assessment> assess(PairRun run) {
    List<Assessment> assessments = new ArrayList<>();
    for (Use use : uses) {
      assessments.add(assess(run, use));
    }
    return assessments;
  }

  private Assessment assess(PairRun run, Use use) {
    Assessment.Builder builder = run.ask(use.topic(), Phrase.of(use.topic()));
    Optional<Phrase> hindrance = run.unusable().or(() -> run.faultOn(allPairs));
    if (hindrance.isPresent()) {
      return builder.limitedBy(hindrance.get()).verdict(Verdict.BEYOND, use.source());
    }
    return switch (use.basis()) {
      case "any" -> run.end(builder.limitedBy(use.limitedBy()), Verdict.WITHIN, use.source());
      case "maker" -> {
        builder.limitedBy(use.limitedBy());
        run.assumeState(builder);
        yield builder.verdict(Verdict.INFORMATION, use.source());
      }
      default ->
          run.length().isEmpty()
              ? builder.notStated(List.of(Phrase.of("pairs.missing.length")), use.source())
              : byLength(run, use, builder.limitedBy(use.limitedBy()));
    };
  }

  private Assessment byLength(PairRun run, Use use, Assessment.Builder builder) {
    return switch (use.basis()) {
      case "capacitance" -> reach(run, use, builder, capacitiveReach(use), Verdict.WITHIN);
      case "reach" -> {
        // The pairs come home in a star, and this bus wants a chain.
        builder.onlyIf(Phrase.of(use.topic() + ".chain"));
        Length limit = Length.metres(use.row().number("limit_m"));
        yield reach(run, use, builder, limit, Verdict.CONDITIONAL);
      }
      case "loop" -> {
        PairLoop.Loop loop = assumeLoop(run, builder);
        yield builder.value(loop.resistance()).verdict(Verdict.INFORMATION, loop.source());
      }
      case "drop" -> {
        PairLoop.Loop pair = assumeLoop(run, builder);
        double amperes = use.row().number("current_ma") / 1000;
        yield builder
            .value(Voltage.volts(pair.resistance().inOhms() * amperes))
            .verdict(Verdict.INFORMATION, use.source().and(pair.source()));
      }
      default -> throw new IllegalStateException("no way to assess " + use.topic());
    };
  }

  private PairLoop.Loop assumeLoop(PairRun run, Assessment.Builder builder) {
    PairLoop.Loop loop = loops.cable(run);
    run.assumeTemperature(builder);
    loop.assumptions().forEach(builder::assuming);
    run.assumeState(builder);
    return loop;
  }

  private static Assessment reach(
      PairRun run, Use use, Assessment.Builder builder, Length limit, Verdict inside) {
    Length margin = limit.minus(run.length().orElseThrow());
    builder.value(run.length().orElseThrow()).limit(limit, margin);
    return run.end(builder, margin.inMetres() >= 0 ? inside : Verdict.BEYOND, use.source());
  }

  /** Length of cable that loads a line to its greatest capacitance: {@code C / c}. */
  private static Length capacitiveReach(Use use) {
    return Length.metres(use.row().number("load_pf") / use.row().number("cable_pf_per_m"));
  }
}
