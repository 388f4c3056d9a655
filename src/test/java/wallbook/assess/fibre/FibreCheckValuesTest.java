package wallbook.assess.fibre;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import wallbook.Jobs;
import wallbook.quantity.Count;
import wallbook.quantity.Decibels;
import wallbook.quantity.Delay;
import wallbook.quantity.Length;
import wallbook.quantity.LinearAttenuation;
import wallbook.quantity.Wavelength;
import wallbook.record.FibreClass;
import wallbook.reference.Row;
import wallbook.reference.Standing;

/** Formulas and tables against published figures; the source stands beside each. */
class FibreCheckValuesTest {
  private static final OpticalApplications APPLICATIONS = new OpticalApplications(Jobs.TABLES);
  private static final FibreCores CORES = new FibreCores(Jobs.TABLES);

  @ParameterizedTest(name = "{0} {1} over {2} m at {3} nm, {4} connectors, {5} splices: {6} dB")
  @CsvSource({
    // Arithmetic of the published budget formula, IL = L·α + n·0.75 + s·0.3:
    "tia, OM3,   90,  850, 2, 0, 1.770", // 0.090·3.0 + 1.50
    "iso, OM3,   90,  850, 2, 0, 1.815", // 0.090·3.5 + 1.50
    "tia, OM3,   90, 1300, 2, 0, 1.635", // 0.090·1.5 + 1.50
    "iso, OM3,   90, 1300, 2, 0, 1.635", // 0.090·1.5 + 1.50
    "tia, OM3,   60,  850, 4, 0, 3.180", // 0.060·3.0 + 3.00
    "design, OM3, 60, 850, 4, 0, 2.180", // 0.060·3.0 + 4·0.5: FOA's typical connection
    "tia, OM4,  150,  850, 2, 2, 2.550", // 0.150·3.0 + 1.5 + 0.6
    "tia, OS2, 2000, 1310, 2, 3, 3.400", // 2·0.5 + 1.5 + 0.9
    "iso, OS2, 2000, 1310, 2, 3, 3.200", // 2·0.4 + 1.5 + 0.9: OS2 by ISO/IEC 14763-3:2024
    "tia, OS1A, 120, 1310, 2, 0, 1.620", // 0.120·1.0 + 1.5
    "tia, OM1,   40, 1300, 2, 0, 1.560", // 0.040·1.5 + 1.5
    // Worked example of ISO/IEC 14763-3:2024: 100 m OM4, two panel connections:
    "iso, OM4,  100,  850, 2, 0, 1.85",
    "iso, OM4,  100, 1300, 2, 0, 1.65",
    // The Fiber Optic Association's typical figures, 1 km with two connections and a splice:
    "design, OM2, 1000,  850, 2, 1, 4.30", // 3.0 + 1.0 + 0.3
    "design, OM2, 1000, 1300, 2, 1, 2.10", // 0.8 + 1.0 + 0.3
    "design, OS2, 1000, 1310, 2, 1, 1.55", // 0.4 + 1.0 + 0.15
    "design, OS2, 1000, 1550, 2, 1, 1.35" // 0.2 + 1.0 + 0.15
  })
  void theBudgetOfALinkAgrees(
      String edition,
      FibreClass fibreClass,
      double metres,
      double nm,
      int connectors,
      int splices,
      double decibels) {
    Optional<Decibels> budget =
        edition(edition)
            .budget(
                fibreClass,
                Wavelength.nanometres(nm),
                Length.metres(metres),
                new Joints(connectors, splices));

    assertEquals(decibels, budget.orElseThrow().inDecibels(), 1e-9);
  }

  @ParameterizedTest(name = "{0} on {1}: {2} m, {3} dB")
  @CsvSource({
    // A test-instrument maker's page that quotes ANSI/TIA-568.3-D:
    "1000BASE-SX,   OM1, 275, 2.60",
    "1000BASE-SX,   OM2, 550, 3.56",
    "10GBASE-SR,    OM1,  33, 2.4",
    "10GBASE-SR,    OM2,  82, 2.3",
    "10GBASE-SR,    OM3, 300, 2.6",
    // An article on fibre loss standards:
    "10GBASE-SR,    OM4, 400, 2.9",
    "50GBASE-SR,    OM4, 100, 1.9",
    "40GBASE-SR4,   OM4, 150, 1.5",
    "100GBASE-SR10, OM4, 150, 1.5",
    // An installation manual that quotes IEEE 802.3aq:
    "10GBASE-LRM,   OM1, 220, 1.9",
    "10GBASE-LRM,   OM2, 220, 1.9",
    "10GBASE-LRM,   OM3, 220, 1.9",
    "10GBASE-LRM,   OM4, 220, 1.9",
    // An industry consortium's page on clause 112:
    "25GBASE-SR,    OM3,  70, 1.8",
    "25GBASE-SR,    OM4, 100, 1.9"
  })
  void reachAndLossAreThosePublished(
      String application, FibreClass fibreClass, double metres, double decibels) {
    OpticalReach reach = APPLICATIONS.named(application).on(fibreClass).orElseThrow();

    assertEquals(metres, reach.reach().inMetres(), 1e-9);
    assertEquals(decibels, reach.loss().inDecibels(), 1e-9);
    assertEquals(Standing.CONFIRMED, reach.reachStanding());
    assertEquals(Standing.CONFIRMED, reach.lossStanding());
  }

  @ParameterizedTest(name = "{0} on {1}: {2} m")
  @CsvSource({
    "40GBASE-SR4,   OM3, 100", // test-instrument maker's page, ANSI/TIA-568.3-D
    "100GBASE-SR10, OM3, 100", // the same
    "100GBASE-SR4,  OM3,  70", // a second article on fibre loss standards
    "100GBASE-SR4,  OM4, 100", // the same
    "40GBASE-LR4,   OS2, 10000", // a university's table of Ethernet media
    "100GBASE-LR4,  OS2, 10000" // the same
  })
  void reachIsThatPublished(String application, FibreClass fibreClass, double metres) {
    OpticalReach reach = APPLICATIONS.named(application).on(fibreClass).orElseThrow();

    assertEquals(metres, reach.reach().inMetres(), 1e-9);
    assertEquals(Standing.CONFIRMED, reach.reachStanding());
  }

  @ParameterizedTest(name = "{0} takes {1} fibres")
  @CsvSource({
    "10GBASE-SR, 2", // IEEE 802.3 clause 52: one pair
    "25GBASE-SR, 2", // consortium's page on clause 112
    "40GBASE-SR4, 8", // two articles: 8 fibres of 12
    "100GBASE-SR4, 8", // the same
    "100GBASE-SR10, 20" // a university's table: ten strands each way
  })
  void aLinkTakesAsManyFibresAsPublished(String application, int fibres) {
    assertEquals(fibres, APPLICATIONS.named(application).fibres().number());
  }

  /**
   * IEEE's channel limits are reach times attenuation plus connections, rounded to a tenth. The
   * published limits come out of the attenuation and the published connection losses (1.5, and 1.0
   * on OM4 for the parallel applications: an article on fibre loss standards).
   */
  @ParameterizedTest(name = "{0} on {1}: {2} dB")
  @CsvSource({
    "10GBASE-SR, OM3, 2.6", // 0.300·3.5 + 1.5 = 2.55
    "10GBASE-SR, OM4, 2.9", // 0.400·3.5 + 1.5 = 2.90
    "25GBASE-SR, OM3, 1.8", // 0.070·3.5 + 1.5 = 1.745
    "25GBASE-SR, OM4, 1.9", // 0.100·3.5 + 1.5 = 1.85
    "50GBASE-SR, OM3, 1.8",
    "50GBASE-SR, OM4, 1.9",
    "40GBASE-SR4, OM3, 1.9", // 0.100·3.5 + 1.5 = 1.85
    "40GBASE-SR4, OM4, 1.5", // 0.150·3.5 + 1.0 = 1.525
    "100GBASE-SR4, OM3, 1.8",
    "100GBASE-SR4, OM4, 1.9",
    "100GBASE-SR10, OM3, 1.9",
    "100GBASE-SR10, OM4, 1.5",
    "1000BASE-SX, OM2, 3.56", // 0.550·3.75 + 1.5 = 3.5625
    "10GBASE-LR, OS2, 6.2", // 10·0.42 + 2
    "25GBASE-LR, OS2, 6.3", // 10·0.43 + 2
    "40GBASE-LR4, OS2, 6.7", // 10·0.47 + 2
    "100GBASE-LR4, OS2, 6.3" // 10·0.43 + 2
  })
  void theChannelLimitIsReachTimesAttenuationPlusConnections(
      String application, FibreClass fibreClass, double published) {
    OpticalReach reach = APPLICATIONS.named(application).on(fibreClass).orElseThrow();
    Decibels rebuilt =
        reach
            .attenuation()
            .orElseThrow()
            .over(reach.reach())
            .plus(reach.connections().orElseThrow());

    assertEquals(published, rebuilt.inDecibels(), 0.0551);
    assertEquals(published, reach.loss().inDecibels(), 1e-9);
  }

  @ParameterizedTest(name = "{0}: overfilled {1} and {2}, laser {3} MHz·km")
  @CsvSource({
    // A test-instrument maker's page that quotes ANSI/TIA-568.3-D:
    "OM1,  200, 500,",
    "OM2,  500, 500,",
    "OM3, 1500, 500, 2000",
    "OM4, 3500, 500, 4700",
    "OM5, 3500, 500, 4700"
  })
  void modalBandwidthIsThatPublished(
      String fibreClass, double ofl850, double ofl1300, Double laser850) {
    Row row = Jobs.TABLES.table("fibre-classes").row(fibreClass);

    assertEquals(ofl850, row.number("ofl_850_mhz_km"));
    assertEquals(ofl1300, row.number("ofl_1300_mhz_km"));
    assertEquals(laser850 == null, row.numberIfAny("emb_850_mhz_km").isEmpty());
    row.numberIfAny("emb_850_mhz_km").ifPresent(emb -> assertEquals(laser850, emb));
  }

  @ParameterizedTest(name = "{0} into {1}: {2} dB by area, {3} dB by aperture")
  @CsvSource({
    "OM3, OS2, 14.89, 3.10", // 20·log10(50/9), 20·log10(0.20/0.14)
    "OM1, OM3, 1.94, 2.77", // 20·log10(62.5/50), 20·log10(0.275/0.20)
    "OM1, OS2, 16.83, 5.86", // 20·log10(62.5/9), 20·log10(0.275/0.14)
    "OS2, OM3, 0, 0",
    "OM3, OM4, 0, 0"
  })
  void lightIsLostWhereTheCoreNarrows(
      FibreClass from, FibreClass into, double area, double aperture) {
    assertEquals(area, CORES.areaLoss(from, into).inDecibels(), 0.005);
    assertEquals(aperture, CORES.apertureLoss(from, into).inDecibels(), 0.005);
  }

  @ParameterizedTest(name = "class {0}: {1} to {2} dB")
  @CsvSource({
    // ITU-T G.984.2 and G.9807.1: limits as published; they must follow from the published levels,
    // most = least launch − sensitivity − penalty, least = most launch − overload.
    "B+, 13, 28, true", // 1.5 + 27 − 0.5; 5 + 8
    "C+, 17, 32, false", // 3 + 30 − 1; the least comes from the upstream direction
    "N1, 14, 29, true", // 2 + 28 − 1; 5 + 9
    "N2, 16, 31, true", // 4 + 28 − 1; 7 + 9
    "E1, 18, 33, true", // 6 + 28 − 1; 9 + 9
    "E2, 20, 35, true" // 8 + 28 − 1; 11 + 9
  })
  void pathLossLimitsOfProviderNetworksFollowFromTheirLevels(
      String name, double least, double most, boolean leastIsDownstream) {
    PassiveNetworkClass network = network(name);

    assertEquals(most, network.mostLoss().inDecibels(), 1e-9);
    assertEquals(least, network.leastLoss().inDecibels(), 1e-9);
    assertEquals(
        most,
        network.leastLaunch().above(network.sensitivity()).minus(network.penalty()).inDecibels(),
        1e-9);
    double byOverload = network.mostLaunch().above(network.overload()).inDecibels();
    assertTrue(byOverload <= least);
    assertEquals(leastIsDownstream, Math.abs(byOverload - least) < 1e-9);
  }

  @Test
  void aProviderPlantWithAThirtyTwoWaySplitterFitsClassBPlus() {
    // 17.2 (splitter's data sheet) + 10 km · 0.4 + 4 · 0.5 = 23.2; 28 − 23.2 = 4.8; above 13.
    Decibels plant =
        LinkLoss.of(
                Length.kilometres(10),
                LinearAttenuation.decibelsPerKilometre(0.4),
                new Joints(4, 0),
                Decibels.decibels(0.5),
                Decibels.decibels(0.15))
            .plus(new OpticalSplitters(Jobs.TABLES).mostLoss(Count.of(32)).orElseThrow());

    assertEquals(23.2, plant.inDecibels(), 1e-9);
    PassiveNetworkClass.Remaining rest = network("B+").after(plant);
    assertEquals(4.8, rest.most().inDecibels(), 1e-9);
    assertTrue(rest.least().inDecibels() < 0);
  }

  @ParameterizedTest(name = "1:{0} loses {1} dB at best and {2} at most")
  @CsvSource({
    // 10·log10 N; a planar splitter's data sheet
    "2, 3.01, 4.3",
    "4, 6.02, 7.4",
    "8, 9.03, 10.7",
    "16, 12.04, 13.9",
    "32, 15.05, 17.2",
    "64, 18.06, 21.5"
  })
  void splittersLoseWhatIsPublished(int ways, double ideal, double most) {
    assertEquals(ideal, OpticalSplitters.idealLoss(Count.of(ways)).inDecibels(), 0.005);
    assertEquals(
        most,
        new OpticalSplitters(Jobs.TABLES).mostLoss(Count.of(ways)).orElseThrow().inDecibels());
  }

  @Test
  void aPulseOverNinetyMetresReturnsAfter890Nanoseconds() {
    // 2·90·1.483 / 299 792 458 s = 890.4 ns; index of an OM4 data sheet
    Reflectometry reflectometry = new Reflectometry(Jobs.TABLES);
    Wavelength nm850 = Wavelength.nanometres(850);
    Delay time = reflectometry.roundTrip(Length.metres(90), false, nm850).orElseThrow();

    assertEquals(890.4, time.inNanoseconds(), 0.5);
    assertEquals(90, reflectometry.length(time, false, nm850).orElseThrow().inMetres(), 1e-9);
  }

  private static LossEdition edition(String key) {
    return key.equals("design")
        ? LossEdition.design(Jobs.TABLES)
        : LossEdition.limits(Jobs.TABLES).stream()
            .filter(e -> e.key().equals(key))
            .findFirst()
            .orElseThrow();
  }

  private static PassiveNetworkClass network(String name) {
    return PassiveNetworkJudge.classes(Jobs.TABLES).stream()
        .filter(c -> c.name().equals(name))
        .findFirst()
        .orElseThrow();
  }
}
