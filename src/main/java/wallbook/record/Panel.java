package wallbook.record;

import java.util.Optional;
import wallbook.quantity.Decibels;

/** A panel in a head. */
public record Panel(
    Origin origin,
    @Says(value = "Name within its head.", example = "P1") @LocalName String id,
    @Says(value = "Name as printed.", example = "Patch panel 1") String name,
    @Says("Kind of panel.") PanelKind kind,
    @Says(value = "Number of ports, posts or trays.", example = "24") int ports,
    @Says(
            value = "Ports in a row, as seen from the front; all in one row unless said.",
            example = "12")
        Optional<Integer> columns,
    @Says(value = "Topmost rack unit it takes.", example = "40") Optional<Integer> rackUnit,
    @Says(value = "Loss from input to each output, for a splitter.", example = "7 dB")
        Optional<Decibels> splitterLoss,
    @Says("Anything a later reader should know.") Optional<String> note) {}
