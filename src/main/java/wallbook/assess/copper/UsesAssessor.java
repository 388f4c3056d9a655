package wallbook.assess.copper;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.quantity.Voltage;
import wallbook.reference.Row;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Assesses what else four pairs can serve: serial lines, telephone, contacts, control, video. */
final class UsesAssessor {
  private final Table uses;
  private final PairLoop loops;
  private final List<String> allPairs;

  UsesAssessor(Tables tables) {
    uses = tables.table("pair-uses");
    loops = new PairLoop(tables);
    allPairs = new WireMap(tables).pairs();
  }

  List<Assessment> assess(PairRun run) {
    List<Assessment> assessments = new ArrayList<>();
    for (Row use : uses.rows()) {
      assessments.add(assess(run, use));
    }
    return assessments;
  }

  private Assessment assess(PairRun run, Row use) {
    String name = use.text("use");
    Assessment.Builder builder = run.ask("pairs.use." + name, Phrase.of("pairs.use." + name));
    Optional<Phrase> hindrance = run.unusable().or(() -> run.faultOn(allPairs));
    if (hindrance.isPresent()) {
      return builder.limitedBy(hindrance.get()).verdict(Verdict.BEYOND, use.source());
    }
    Phrase limitedBy = limitedBy(use);
    return switch (use.text("basis")) {
      case "any" -> run.end(builder.limitedBy(limitedBy), Verdict.WITHIN, use.source());
      case "maker" -> {
        builder.limitedBy(limitedBy);
        run.assumeState(builder);
        yield builder.verdict(Verdict.INFORMATION, use.source());
      }
      default ->
          run.length().isEmpty()
              ? builder.notStated(List.of(Phrase.of("pairs.missing.length")), use.source())
              : byLength(run, use, builder.limitedBy(limitedBy));
    };
  }

  /** What decides, with the length that the trade commonly keeps to where the table has one. */
  private static Phrase limitedBy(Row use) {
    String key = "pairs.use." + use.text("use") + ".limit";
    return use.numberIfAny("common_m").stream()
        .mapToObj(metres -> Phrase.of(key, "common", Length.metres(metres)))
        .findFirst()
        .orElse(Phrase.of(key));
  }

  private Assessment byLength(PairRun run, Row use, Assessment.Builder builder) {
    return switch (use.text("basis")) {
      case "capacitance" -> reach(run, use, builder, capacitiveReach(use), Verdict.WITHIN);
      case "reach" -> {
        // The pairs come home in a star, and this bus wants a chain.
        builder.assuming(Phrase.of("pairs.use." + use.text("use") + ".chain"));
        Length limit = Length.metres(use.number("limit_m"));
        yield reach(run, use, builder, limit, Verdict.CONDITIONAL);
      }
      case "loop" -> {
        PairLoop.Loop loop = assumeLoop(run, builder);
        yield builder.value(loop.resistance()).verdict(Verdict.INFORMATION, loop.source());
      }
      case "drop" -> {
        PairLoop.Loop pair = assumeLoop(run, builder);
        double amperes = use.number("current_ma") / 1000;
        yield builder
            .value(Voltage.volts(pair.resistance().inOhms() * amperes))
            .verdict(Verdict.INFORMATION, use.source().and(pair.source()));
      }
      default -> throw new IllegalStateException("no way to assess " + use.text("use"));
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
      PairRun run, Row use, Assessment.Builder builder, Length limit, Verdict inside) {
    Length margin = limit.minus(run.length().orElseThrow());
    builder.value(run.length().orElseThrow()).limit(limit, margin);
    return run.end(builder, margin.inMetres() >= 0 ? inside : Verdict.BEYOND, use.source());
  }

  /** Length of cable that loads a line to its greatest capacitance: {@code C / c}. */
  private static Length capacitiveReach(Row use) {
    return Length.metres(use.number("load_pf") / use.number("cable_pf_per_m"));
  }
}
