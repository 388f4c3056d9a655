package wallbook.record;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.Resistance;

/** A test of a run. */
public record RunTest(
    Origin origin,
    @Says(value = "Name for references.", example = "t-k-01") @Id(Kind.TEST) String id,
    @Says(value = "Run tested.", example = "r-k-tv-1") @RefersTo(Kind.RUN) String run,
    @Says(value = "Day of the test.", example = "2026-04-20") LocalDate date,
    @Says("Kind of test.") TestKind kind,
    @Says("Outcome as given.") TestResult result,
    @Says("Limit it was judged by.") Optional<TestLimit> limit,
    @Says(
            value =
                "For pins 1 to 8 of the from-end the pin reached at the to-end; open where none.",
            example = "[1, 2, 3, 4, 5, 6, 7, 8]")
        List<String> wireMap,
    @Says(value = "Pins found joined.", example = "3-6") List<String> shorts,
    @Says(value = "Pairs found split.", example = "36-45") List<String> splitPairs,
    @Says(value = "Length measured.", example = "116 ft") Optional<Length> length,
    @Says(value = "Propagation delay of the slowest pair.", example = "168 ns")
        Optional<Delay> delay,
    @Says(value = "Delay between the fastest and the slowest pair.", example = "9 ns")
        Optional<Delay> skew,
    @Says(value = "Loop resistance of one pair.", example = "6.1 ohm")
        Optional<Resistance> loopResistance,
    @Says("Worst values of a summary.") List<WorstValue> worst,
    @Says("Optical losses.") List<LossReading> losses,
    @Says(value = "File of the full sweep, beside the record.", example = "sweeps/k-01.csv")
        Optional<String> sweep,
    @Says(value = "Accuracy of the instrument at the limit.", example = "0.8 dB")
        Optional<Decibels> accuracy,
    @Says(value = "Instrument used.", example = "Wire tester (invented)")
        Optional<String> instrument,
    @Says(value = "Day the instrument was last calibrated.", example = "2025-11-03")
        Optional<LocalDate> calibrated,
    @Says("Who tested.") Optional<String> by,
    @Says(value = "What was found, if it failed.", example = "pin 3 open near the plate")
        Optional<String> reason) {
  public RunTest {
    wireMap = List.copyOf(wireMap);
    shorts = List.copyOf(shorts);
    splitPairs = List.copyOf(splitPairs);
    worst = List.copyOf(worst);
    losses = List.copyOf(losses);
  }
}
