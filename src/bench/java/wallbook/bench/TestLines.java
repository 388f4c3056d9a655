package wallbook.bench;

import static wallbook.bench.Room.metres;

/** Tests as the record writes them; values follow from the lengths as real ones would. */
final class TestLines {
  private static final double DELAY_NS_PER_METRE = 5.4;
  private static final double PAIR_LOOP_OHM_PER_METRE = 0.145;
  private static final double SPEAKER_LOOP_OHM_PER_METRE = 0.0268;

  private TestLines() {}

  static String test(WiredRun run) {
    String head = "  - {id: t-%s, run: %s, date: 2026-04-21,".formatted(run.id(), run.id());
    return switch (run.sort().test()) {
      case CERTIFICATION -> certification(run);
      case PAIRS ->
          head
              + " kind: verification, result: pass, wire_map: [1, 2, 3, 4, 5, 6, 7, 8], length: "
              + metres(run.linkMetres())
              + ", instrument: wire tester 2 (invented), calibrated: 2025-11-10}";
      case CONTINUITY ->
          head
              + " kind: continuity, result: pass, instrument: multimeter 3 (invented),"
              + " calibrated: 2025-06-20}";
      case LOSS -> loss(run);
      case RESISTANCE ->
          head
              + " kind: resistance, result: pass, loop_resistance: "
              + Decimals.of(run.lengthMetres() * SPEAKER_LOOP_OHM_PER_METRE, 2)
              + " ohm"
              + ", instrument: multimeter 3 (invented), calibrated: 2025-06-20}";
      case TONING -> head + " kind: toning, result: pass, instrument: tone set 5 (invented)}";
    };
  }

  private static String certification(WiredRun run) {
    boolean augmented = run.sort() == RunSort.ACCESS_POINT;
    return head(run, "certification")
        + """
            limit: {standard: tia_568_2_d, category: %s, configuration: permanent_link}
            wire_map: [1, 2, 3, 4, 5, 6, 7, 8]
            length: %s
            delay: %s ns
            skew: 5 ns
            loop_resistance: %s ohm
            worst:
        """
            .formatted(
                augmented ? "cat6a" : "cat6",
                metres(run.linkMetres()),
                Decimals.of(run.linkMetres() * DELAY_NS_PER_METRE, 0),
                Decimals.of(run.linkMetres() * PAIR_LOOP_OHM_PER_METRE, 1))
        + (augmented ? worstCat6a(run) : worstCat6(run))
        + """
            accuracy: %s dB
            instrument: certifier 1 (invented)
            calibrated: 2025-11-03\
        """
            .formatted(augmented ? "1.1" : "0.8");
  }

  private static String head(WiredRun run, String kind) {
    return """
      - id: t-%s
        run: %s
        date: 2026-04-21
        kind: %s
        result: pass
    """
        .formatted(run.id(), run.id(), kind);
  }

  private static String worstCat6(WiredRun run) {
    double insertionLoss = run.linkMetres() * 0.344;
    return """
          - {parameter: insertion_loss, pair: 12, frequency: 250 MHz, value: %s dB, margin: %s dB}
          - {parameter: next, pair: 36-78, frequency: 173 MHz, value: 41.3 dB, margin: 3.3 dB}
          - {parameter: psnext, pair: 45, frequency: 164 MHz, value: 40.1 dB, margin: 4.3 dB}
          - {parameter: return_loss, pair: 45, frequency: 225 MHz, value: 15.1 dB, margin: 4.6 dB}
    """
        .formatted(Decimals.of(insertionLoss, 1), Decimals.of(31.1 - insertionLoss, 1));
  }

  private static String worstCat6a(WiredRun run) {
    double insertionLoss = run.linkMetres() * 0.484;
    return """
          - {parameter: insertion_loss, pair: 45, frequency: 500 MHz, value: %s dB, margin: %s dB}
          - {parameter: next, pair: 12-45, frequency: 306 MHz, value: 38.3 dB, margin: 4.6 dB}
          - {parameter: psnext, pair: 45, frequency: 338 MHz, value: 33.6 dB, margin: 4.0 dB}
          - {parameter: return_loss, pair: 12, frequency: 457 MHz, value: 12.1 dB, margin: 4.1 dB}
    """
        .formatted(Decimals.of(insertionLoss, 1), Decimals.of(43.8 - insertionLoss, 1));
  }

  private static String loss(WiredRun run) {
    return head(run, "light_source")
        + """
            length: %s
            losses:
              - {wavelength: 850 nm, loss: 0.68 dB, direction: from_to, fibre: 1}
              - {wavelength: 850 nm, loss: 0.74 dB, direction: from_to, fibre: 2}
              - {wavelength: 1300 nm, loss: 0.54 dB, direction: from_to, fibre: 1}
              - {wavelength: 1300 nm, loss: 0.69 dB, direction: from_to, fibre: 2}
            instrument: light source and power meter 4 (invented)
            calibrated: 2025-09-15\
        """
            .formatted(metres(run.linkMetres()));
  }
}
