package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Resistance;
import wallbook.quantity.Voltage;

/** Speakers that play together. */
public record Zone(
    Origin origin,
    @Says(value = "Name for references.", example = "z-kitchen") @Id(Kind.ZONE) String id,
    @Says(value = "Name as printed.", example = "Kitchen") String name,
    @Says("Kind of zone.") ZoneKind kind,
    @Says("Spaces it covers.") @RefersTo(Kind.SPACE) List<String> spaces,
    @Says("Its speakers.") List<Speaker> speakers,
    @Says("Place of its volume control.") @RefersTo(Kind.PLACE) Optional<String> volumeControl,
    @Says(value = "Least impedance its amplifier takes.", example = "4 ohm")
        Optional<Resistance> amplifierMinimum,
    @Says(value = "Damping factor of its amplifier, by its data sheet.", example = "200")
        Optional<Double> amplifierDamping,
    @Says(value = "Voltage of a constant-voltage line.", example = "70.7 V")
        Optional<Voltage> lineVoltage,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public Zone {
    spaces = List.copyOf(spaces);
    speakers = List.copyOf(speakers);
  }
}
