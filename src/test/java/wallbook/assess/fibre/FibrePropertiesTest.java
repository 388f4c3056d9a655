package wallbook.assess.fibre;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Quantity;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;

/** What holds for every link, whatever its figures. */
class FibrePropertiesTest {
  private static final Decibels CONNECTOR = Decibels.decibels(0.75);
  private static final Decibels SPLICE = Decibels.decibels(0.3);

  @Property
  void moreOfAnythingNeverLosesLess(
      @ForAll @DoubleRange(min = 0, max = 20_000) double metres,
      @ForAll @DoubleRange(min = 0, max = 20_000) double more,
      @ForAll @DoubleRange(min = 0, max = 10) double decibelsPerKilometre,
      @ForAll @IntRange(max = 20) int connectors,
      @ForAll @IntRange(max = 20) int splices) {
    LinearAttenuation attenuation = LinearAttenuation.decibelsPerKilometre(decibelsPerKilometre);
    Decibels loss = loss(metres, attenuation, connectors, splices);

    assertTrue(loss.inDecibels() >= 0);
    assertTrue(loss(metres + more, attenuation, connectors, splices).compareTo(loss) >= 0);
    assertTrue(loss(metres, attenuation, connectors + 1, splices).compareTo(loss) > 0);
    assertTrue(loss(metres, attenuation, connectors, splices + 1).compareTo(loss) > 0);
  }

  @Property
  void aLinkInTwoPartsLosesWhatItsPartsLose(
      @ForAll @DoubleRange(min = 0, max = 5_000) double first,
      @ForAll @DoubleRange(min = 0, max = 5_000) double second) {
    LinearAttenuation attenuation = LinearAttenuation.decibelsPerKilometre(3);

    assertEquals(
        loss(first, attenuation, 1, 2).plus(loss(second, attenuation, 3, 1)).inDecibels(),
        loss(first + second, attenuation, 4, 3).inDecibels(),
        1e-9);
  }

  @Property
  void aNegativeLengthOrNumberIsRefused(
      @ForAll @DoubleRange(min = -1000, max = -0.01) double metres,
      @ForAll @IntRange(min = -9, max = -1) int number) {
    LinearAttenuation attenuation = LinearAttenuation.decibelsPerKilometre(3);

    assertThrows(IllegalArgumentException.class, () -> loss(metres, attenuation, 2, 0));
    assertThrows(IllegalArgumentException.class, () -> loss(1, attenuation.times(-1), 2, 0));
    assertThrows(IllegalArgumentException.class, () -> new Joints(number, 0));
    assertThrows(IllegalArgumentException.class, () -> new Joints(0, number));
  }

  @Property(tries = 100)
  void aLongerRunNeverCarriesMore(
      @ForAll FibreClass fibreClass,
      @ForAll @DoubleRange(min = 0.5, max = 12_000) double metres,
      @ForAll @DoubleRange(min = 1, max = 4) double factor) {
    Set<String> shorter = carried(fibreClass, 24, metres, 2);

    assertTrue(shorter.containsAll(carried(fibreClass, 24, metres * factor, 2)));
  }

  @Property(tries = 100)
  void moreConnectorsOrFewerFibresNeverCarryMore(
      @ForAll FibreClass fibreClass,
      @ForAll @DoubleRange(min = 0.5, max = 600) double metres,
      @ForAll @IntRange(max = 6) int connectors,
      @ForAll @IntRange(min = 1, max = 24) int fibres) {
    Set<String> carried = carried(fibreClass, fibres, metres, connectors);

    assertTrue(carried.containsAll(carried(fibreClass, fibres, metres, connectors + 1)));
    assertTrue(carried(fibreClass, fibres + 1, metres, connectors).containsAll(carried));
  }

  @Property(tries = 100)
  void whatIsCarriedHasAMarginAndWhatIsBeyondALimitFallsShort(
      @ForAll FibreClass fibreClass,
      @ForAll @DoubleRange(min = 0.5, max = 12_000) double metres,
      @ForAll @IntRange(max = 6) int connectors) {
    for (Assessment assessment : applications(fibreClass, 12, metres, connectors)) {
      if (assessment.margin().isPresent()) {
        double margin = number(assessment.margin().get());
        assertTrue(assessment.holds() ? margin >= -1e-9 : margin < 0, assessment::toString);
        assertEquals(
            number(assessment.limit().orElseThrow()) - number(assessment.value().orElseThrow()),
            margin * (assessment.value().get() instanceof Count ? -1 : 1),
            1e-9);
      }
    }
  }

  @Property
  void lengthAndRoundTripAreEachOthersInverse(
      @ForAll @DoubleRange(min = 0, max = 100_000) double metres, @ForAll boolean singleMode) {
    Reflectometry reflectometry = new Reflectometry(Jobs.TABLES);
    Wavelength wavelength = Wavelength.nanometres(singleMode ? 1550 : 850);

    assertEquals(
        metres,
        reflectometry
            .roundTrip(Length.metres(metres), singleMode, wavelength)
            .flatMap(time -> reflectometry.length(time, singleMode, wavelength))
            .orElseThrow()
            .inMetres(),
        1e-6);
  }

  private static Decibels loss(
      double metres, LinearAttenuation attenuation, int connectors, int splices) {
    return LinkLoss.of(
        Length.metres(metres), attenuation, new Joints(connectors, splices), CONNECTOR, SPLICE);
  }

  private static Set<String> carried(
      FibreClass fibreClass, int fibres, double metres, int connectors) {
    return applications(fibreClass, fibres, metres, connectors).stream()
        .filter(Assessment::holds)
        .map(Assessment::topic)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<Assessment> applications(
      FibreClass fibreClass, int fibres, double metres, int connectors) {
    String cable =
        "cables: [{id: any, name: Any, medium: fibre, fibre_class: %s, fibres: %d}]\n"
            .formatted(fibreClass.word(), fibres);
    return FibreJobs.assess(
            FibreJobs.house(
                cable, FibreJobs.run("r", "any", metres + " m"), FibreJobs.joints(connectors, 0)))
        .stream()
        .filter(a -> a.topic().startsWith("fibre.application."))
        .toList();
  }

  private static double number(Quantity quantity) {
    if (quantity instanceof Decibels decibels) {
      return decibels.inDecibels();
    } else if (quantity instanceof Length length) {
      return length.inMetres();
    }
    return ((Count) quantity).number();
  }
}
