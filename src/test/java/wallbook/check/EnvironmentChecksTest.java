package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Levels of jackets by NFPA 70 (NEC) tables 800.179, 770.179, 820.179, 725.179; places for them by
 * 800.113 and 800.154; outdoor marks by 300.5(B) and 300.9.
 */
class EnvironmentChecksTest {
  private static SmallHouse run(String cable, String rest) {
    return house()
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: "
                + cable
                + ", from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark, "
                + rest
                + "}");
  }

  @ParameterizedTest
  @CsvSource({
    "cm, riser",
    "cl3, riser",
    "ofn, riser",
    "catv, riser",
    "cmx, riser",
    "cmr, plenum",
    "cl3r, plenum",
    "ofnr, plenum",
    "unmarked, in_wall",
    "unmarked, attic"
  })
  void aLowerJacketIsReported(String jacket, String environment) {
    var finding =
        run("cat6", "jacket: " + jacket + ", environments: [¶" + environment + "]")
            .finds("jacket-below-environment");
    assertEquals(Optional.of(jacket), finding.found());
  }

  @ParameterizedTest
  @CsvSource({
    "cmr, riser", "cl3r, riser", "ofnr, riser", "catvr, riser", "cmp, riser", "cmp, plenum",
    "cl2p, plenum", "ofnp, plenum", "catvp, plenum", "cmx, in_wall", "cm, attic", "unmarked, slab"
  })
  void aSufficientJacketIsNot(String jacket, String environment) {
    run("cat6", "jacket: " + jacket + ", environments: [" + environment + "]")
        .findsNo("jacket-below-environment");
  }

  @Test
  void theJacketOfTheTypeCountsWhereTheRunHasNone() {
    run("cat6", "environments: [in_wall, ¶plenum]").finds("jacket-below-environment");
    run("cat6", "environments: [in_wall, riser]").findsNo("jacket-below-environment");
  }

  @Test
  void aCableInTheWallsHasAJacketMark() {
    String type =
        "- {id: own, name: Own, medium: speaker, gauge: 16, conductors: 2, diameter: 7 mm}";
    house()
        .with("cables", type)
        .with(
            "runs",
            "- {id: r1, label: K-01, cable: ¶own, from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark, environments: [in_wall]}")
        .finds("jacket-not-recorded");
    run("own", "jacket: cl3, environments: [in_wall]")
        .with("cables", type)
        .findsNo("jacket-not-recorded");
  }

  @Test
  void buriedCableIsMarkedForDirectBurial() {
    run("cat6", "environments: [in_wall, ¶buried]").finds("outdoor-cable-not-rated");
    run("cat6-outdoor", "environments: [buried]").findsNo("outdoor-cable-not-rated");
  }

  @Test
  void inABuriedConduitAWetLocationMarkIsEnough() {
    String type =
        "- {id: wet, name: Wet, medium: balanced_pair, category: cat6, pairs: 4, outdoor: [wet_location]}";
    String conduit =
        "- {id: c1, label: C-1, name: C, type: pvc_40, trade_size: 1, from: {head: rack}, to: {place: d1}, contents: [r1], pull_string: both_ends, condition: clear}";

    run("wet", "environments: [buried], conduits: [c1]")
        .with("cables", type)
        .with("conduits", conduit)
        .findsNo("outdoor-cable-not-rated");
    run("wet", "environments: [¶buried]").with("cables", type).finds("outdoor-cable-not-rated");
    run("cat6", "environments: [¶buried], conduits: [c1]")
        .with("conduits", conduit)
        .finds("outdoor-cable-not-rated");
  }

  @Test
  void sunAndWetConduitsNeedTheirMarks() {
    run("cat6", "environments: [¶outdoor_exposed]").finds("outdoor-cable-not-rated");
    run("low-loss-405", "environments: [outdoor_exposed]").findsNo("outdoor-cable-not-rated");
    run("low-loss-405", "environments: [¶outdoor_conduit]").finds("outdoor-cable-not-rated");
  }

  @Test
  void aRunToAStubOutSaysHowItGetsThere() {
    String place =
        "- {id: d1, name: Stub-out, space: garden, kind: stub_out, use: landscape_audio}";
    String start =
        "- {id: r1, label: K-01, cable: speaker-16-4-burial, from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark, environments: ";
    house()
        .with("places", place)
        .with("runs", start + "¶[in_wall]}")
        .finds("outdoor-run-without-environment");
    house()
        .with("places", place)
        .with("runs", start + "[in_wall, buried]}")
        .findsNo("outdoor-run-without-environment");
    house()
        .with("places", place.replace("stub_out, use: landscape_audio", "device, use: camera"))
        .with("runs", start + "[in_wall]}")
        .findsNo("outdoor-run-without-environment");
  }
}
