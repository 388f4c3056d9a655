package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Decibels;
import wallbook.quantity.Wavelength;

/** Optical loss read with light source and power meter. */
public record LossReading(
    Origin origin,
    @Says(value = "Wavelength of the source.", example = "850 nm") Wavelength wavelength,
    @Says(value = "Loss read.", example = "1.1 dB") Decibels loss,
    @Says("Direction of the light along the run.") Optional<LossDirection> direction,
    @Says(value = "Which fibre, from 1.", example = "1") Optional<Integer> fibre) {}
