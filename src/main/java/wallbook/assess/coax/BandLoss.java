package wallbook.assess.coax;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Frequency;
import wallbook.quantity.Length;
import wallbook.quantity.Temperature;
import wallbook.reference.Source;
import wallbook.wording.Phrase;

/**
 * Loss of a run at both edges of a band: cable, connectors, recorded splitters, impedance steps.
 *
 * @param low loss at the lower edge
 * @param high loss at the upper edge
 * @param notes what was taken for granted
 */
record BandLoss(Decibels low, Decibels high, List<Phrase> notes, Source source) {

  /** Ends of a run, each with one connector and one step to the equipment's impedance. */
  private static final int ENDS = 2;

  BandLoss {
    notes = List.copyOf(notes);
  }

  /** Difference of loss over the band. */
  Decibels tilt() {
    return high.minus(low);
  }

  /**
   * @param run of known length
   * @param cable that covers the band
   */
  static BandLoss of(CoaxRun run, CoaxCable cable, CoaxBand band) {
    List<Phrase> notes = new ArrayList<>();
    Length length = run.length().orElseThrow();
    Temperature temperature = run.temperature().orElse(cable.reference());
    notes.add(
        Phrase.of(
            run.temperature().isPresent()
                ? "coax.assume.temperature"
                : "coax.assume.temperature-usual",
            "temperature",
            temperature));
    Optional<Decibels> connectors =
        cable
            .connectors()
            .filter(allowance -> band.to().compareTo(allowance.upTo()) <= 0)
            .map(allowance -> allowance.each().times(ENDS));
    notes.add(
        connectors
            .map(loss -> Phrase.of("coax.assume.connectors", "loss", loss))
            .orElse(Phrase.of("coax.assume.connectors-not-counted")));
    Decibels fixed = run.splitters().plus(connectors.orElse(Decibels.decibels(0)));
    ImpedanceStep step = new ImpedanceStep(cable.impedance(), band.impedance());
    if (step.isStep()) {
      Decibels mismatch = step.mismatchLoss().times(ENDS);
      fixed = fixed.plus(mismatch);
      notes.add(
          Phrase.of(
              "coax.assume.mismatch",
              "cable",
              cable.impedance(),
              "equipment",
              band.impedance(),
              "loss",
              mismatch,
              "ratio",
              step.standingWaveRatio(),
              "returnLoss",
              step.returnLoss()));
    }
    cable
        .law()
        .attenuation(band.to())
        .map(
            law ->
                Phrase.of(
                    "coax.assume.law",
                    "law",
                    law.over(length).times(cable.temperatureFactor(temperature)),
                    "table",
                    at(cable, band.to(), temperature, length),
                    "residual",
                    cable.law().residual().over(length)))
        .ifPresent(notes::add);
    return new BandLoss(
        at(cable, band.from(), temperature, length).plus(fixed),
        at(cable, band.to(), temperature, length).plus(fixed),
        notes,
        cable.source(band.to()));
  }

  private static Decibels at(
      CoaxCable cable, Frequency frequency, Temperature temperature, Length length) {
    return cable.attenuation(frequency, temperature).orElseThrow().over(length);
  }
}
