package wallbook.assess.wire;

import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunEnd;

/**
 * What a wire may be asked to carry. Wire is not as particular as a coax: speaker cable feeds
 * shades, and a spare one at the demarcation may do either, so that both are assessed.
 */
public final class WireUse {
  private static final Set<PlaceUse> SIGNALLING =
      Set.of(
          PlaceUse.KEYPAD,
          PlaceUse.CONTACT,
          PlaceUse.MOTION_SENSOR,
          PlaceUse.GLASS_BREAK_SENSOR,
          PlaceUse.REPEATER);
  private static final Set<PlaceUse> HEARD =
      Set.of(
          PlaceUse.SPEAKER, PlaceUse.SUBWOOFER, PlaceUse.VOLUME_CONTROL, PlaceUse.LANDSCAPE_AUDIO);

  private WireUse() {}

  /** Whether speaker cable may feed loudspeakers, named by a zone or not. */
  public static boolean forSpeakers(Job job, Run run) {
    return medium(job, run) == Medium.SPEAKER
        && run.feed().isEmpty()
        && uses(job, run).noneMatch(WireUse::isSupplied);
  }

  /** Whether a run may feed equipment with low-voltage direct current. */
  public static boolean forSupply(Job job, Run run) {
    return switch (medium(job, run)) {
      case CONTROL, POWER -> run.feed().isPresent() || !isInZone(job, run);
      case SPEAKER ->
          run.feed().isPresent()
              || (!isInZone(job, run) && uses(job, run).noneMatch(HEARD::contains));
      case BALANCED_PAIR -> run.feed().isPresent();
      case FIBRE, COAX -> false;
    };
  }

  /** Whether a zone of the record names the run for one of its speakers. */
  private static boolean isInZone(Job job, Run run) {
    return job.isOfZone(run);
  }

  /**
   * Whether the other conductors of the run carry signals, so that they cannot be joined to those
   * of the supply: keypads and sensors.
   */
  public static boolean needsPairForSignal(Job job, Run run) {
    return uses(job, run).anyMatch(SIGNALLING::contains);
  }

  private static boolean isSupplied(PlaceUse use) {
    return use == PlaceUse.SHADE || SIGNALLING.contains(use);
  }

  private static Medium medium(Job job, Run run) {
    return job.cableOf(run).medium();
  }

  private static Stream<PlaceUse> uses(Job job, Run run) {
    return Stream.of(run.from(), run.to())
        .map(RunEnd::place)
        .flatMap(Optional::stream)
        .map(place -> job.place(place).use());
  }
}
