package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Current;
import wallbook.quantity.Power;
import wallbook.quantity.Voltage;

/** What a low-voltage run supplies: its voltage and the load at the far end. */
public record Feed(
    Origin origin,
    @Says(value = "Voltage at the supply.", example = "12 V") Voltage voltage,
    @Says(value = "Largest current drawn.", example = "150 mA") Optional<Current> current,
    @Says(value = "Largest power drawn, if that is what is known.", example = "30 W")
        Optional<Power> power,
    @Says(value = "Conductors joined for each pole; one unless said.", example = "2")
        Optional<Integer> conductorsInParallel) {}
