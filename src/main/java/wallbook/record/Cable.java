package wallbook.record;

import java.util.List;
import java.util.Optional;
import wallbook.quantity.Force;
import wallbook.quantity.Length;
import wallbook.quantity.LinearMass;

/** A type of cable used in the job. */
public record Cable(
    Origin origin,
    @Says(value = "Name for references.", example = "cat6") @Id(Kind.CABLE) String id,
    @Says(value = "Name as printed.", example = "Category 6, four pairs") String name,
    @Says("What it is made to carry.") Medium medium,
    @Says("Category, for balanced pairs.") Optional<PairCategory> category,
    @Says(value = "Number of pairs.", example = "4") Optional<Integer> pairs,
    @Says("Whether pairs or cable are screened.") Optional<Boolean> screened,
    @Says("Class of its fibres.") Optional<FibreClass> fibreClass,
    @Says(value = "Number of fibres.", example = "2") Optional<Integer> fibres,
    @Says("Construction, for coax.") Optional<CoaxSeries> coax,
    @Says(value = "Size of the conductors in AWG.", example = "16") Optional<Integer> gauge,
    @Says(value = "Number of conductors.", example = "4") Optional<Integer> conductors,
    @Says("Whether the conductors are stranded.") Optional<Boolean> stranded,
    @Says(value = "Outer diameter; of a flat cable the greater.", example = "0.25 in")
        Optional<Length> diameter,
    @Says(value = "Weight per length.", example = "26 lb/1000 ft") Optional<LinearMass> weight,
    @Says("Fire rating marked on the jacket.") Optional<Jacket> jacket,
    @Says("Marks that allow it outdoors.") List<OutdoorRating> outdoor,
    @Says(value = "Largest pulling tension by its data sheet.", example = "25 lbf")
        Optional<Force> maximumTension,
    @Says(value = "Least bend radius at rest by its data sheet.", example = "1 in")
        Optional<Length> bendRadius,
    @Says("Anything a later reader should know.") Optional<String> note) {
  public Cable {
    outdoor = List.copyOf(outdoor);
  }

  /** The same cable type under another name. */
  public Cable named(String other) {
    return new Cable(
        origin,
        id,
        other,
        medium,
        category,
        pairs,
        screened,
        fibreClass,
        fibres,
        coax,
        gauge,
        conductors,
        stranded,
        diameter,
        weight,
        jacket,
        outdoor,
        maximumTension,
        bendRadius,
        note);
  }
}
