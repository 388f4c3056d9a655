package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.finding.Severity;

/** Fibres, cable types, zones. */
class MediaChecksTest {
  private static String run(String cable) {
    return "- {id: r1, label: K-01, cable: "
        + cable
        + ", from: {head: rack, finish: coiled}, to: {place: d1, finish: coiled}, condition: dark}";
  }

  private static SmallHouse zone(String cable, String speakers) {
    return house()
        .with("runs", run(cable))
        .with("zones", "- {id: z1, name: Den, kind: audio, speakers: [" + speakers + "]}");
  }

  @Test
  void aFibreEntryIsForAFibreRun() {
    var finding =
        house()
            .with("runs", run("cat6"))
            .with("fibres", "- {id: f1, run: ¶r1, where_found: box}")
            .finds("fibre-entry-on-other-run");
    assertEquals(Severity.ERROR, finding.severity());

    house()
        .with("runs", run("om3-2"))
        .with("fibres", "- {id: f1, run: r1, where_found: box}")
        .findsNo("fibre-entry-on-other-run");
  }

  @Test
  void aRunHasOneFibreEntry() {
    house()
        .with("runs", run("om3-2"))
        .with(
            "fibres",
            "- {id: f1, run: r1, where_found: box}",
            "- {id: f2, run: ¶r1, where_found: box}")
        .finds("two-fibre-entries");
    house()
        .with("runs", run("om3-2"))
        .with("fibres", "- {id: f1, run: r1, where_found: box}")
        .findsNo("two-fibre-entries");
  }

  @Test
  void aLooseFibreIsDescribed() {
    house()
        .with("runs", run("om3-2"))
        .with("fibres", "- ¶{id: f1, run: r1}")
        .finds("loose-fibre-not-described");
    house()
        .with("runs", run("om3-2"))
        .with("fibres", "- {id: f1, run: r1, where_found: behind the blank plate}")
        .findsNo("loose-fibre-not-described");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "medium: balanced_pair, category: cat6",
        "medium: fibre, fibres: 2",
        "medium: coax",
        "medium: speaker, conductors: 2",
        "medium: control, gauge: 22",
        "medium: power"
      })
  void aCableTypeHasTheFactsOfItsMedium(String facts) {
    house().with("cables", "- ¶{id: own, name: Own, " + facts + "}").finds("cable-facts-missing");
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "medium: balanced_pair, category: cat6, pairs: 4",
        "medium: fibre, fibre_class: om3, fibres: 2",
        "medium: coax, coax: series_6",
        "medium: speaker, gauge: 16, conductors: 2",
        "medium: control, gauge: 22, conductors: 4",
        "medium: power, gauge: 16, conductors: 2"
      })
  void aCableTypeWithItsFactsIsSilent(String facts) {
    SmallHouse small = house().with("cables", "- {id: own, name: Own, " + facts + "}");
    small.findsNo("cable-facts-missing");
    small.findsNo("cable-fact-of-another-medium");
  }

  @Test
  void coaxHasNoFibreClass() {
    house()
        .with("cables", "- {id: own, name: Own, medium: coax, coax: series_6, fibre_class: ¶om3}")
        .finds("cable-fact-of-another-medium");
  }

  @Test
  void aCableTypeIsUsed() {
    String type = "name: Own, medium: coax, coax: series_6}";
    house().with("cables", "- {id: ¶own, " + type).finds("cable-type-unused");
    house()
        .with("cables", "- {id: own, " + type)
        .with("runs", run("own"))
        .findsNo("cable-type-unused");
  }

  @Test
  void aCableInAConduitHasADiameter() {
    String conduit =
        "- {id: c1, label: C-1, name: C, type: ent, trade_size: 1, from: {head: rack}, to: {place: d1}, contents: [r1], pull_string: none, condition: clear}";
    String inConduit = run("own").replace("condition: dark", "condition: dark, conduits: [c1]");
    String type = "name: Own, medium: coax, coax: series_6";
    house()
        .with("cables", "- {id: ¶own, " + type + "}")
        .with("runs", inConduit)
        .with("conduits", conduit)
        .finds("cable-without-diameter");
    house()
        .with("cables", "- {id: own, " + type + ", diameter: 7 mm}")
        .with("runs", inConduit)
        .with("conduits", conduit)
        .findsNo("cable-without-diameter");
    house()
        .with("cables", "- {id: own, " + type + "}")
        .with("runs", run("own"))
        .findsNo("cable-without-diameter");
  }

  @Test
  void aZoneHasSpeakers() {
    house().with("zones", "- ¶{id: z1, name: Den, kind: audio}").finds("zone-without-speakers");
    zone("speaker-16-2", "{run: r1, impedance: 8 ohm}").findsNo("zone-without-speakers");
  }

  @Test
  void aSpeakerHasARun() {
    zone("speaker-16-2", "¶{place: d1, impedance: 8 ohm}").finds("speaker-without-run");
    zone("speaker-16-2", "{run: r1, impedance: 8 ohm}").findsNo("speaker-without-run");
  }

  @Test
  void aSpeakerIsFedBySpeakerCable() {
    zone("cat6", "{run: ¶r1, impedance: 8 ohm}").finds("speaker-on-other-cable");
    zone("speaker-16-2", "{run: r1, impedance: 8 ohm}").findsNo("speaker-on-other-cable");
  }

  @Test
  void aSpeakerIsNotFedByADeadRun() {
    String zone = "- {id: z1, name: Den, kind: audio, speakers: [{run: ¶r1, impedance: 8 ohm}]}";
    house()
        .with("runs", run("speaker-16-2").replace("dark", "damaged"))
        .with("zones", zone)
        .finds("speaker-on-dead-run");
    house()
        .with("runs", run("speaker-16-2"))
        .with("zones", zone.replace("¶", ""))
        .findsNo("speaker-on-dead-run");
  }

  @Test
  void theRunEndsAtItsSpeaker() {
    zone("speaker-16-2", "{run: ¶r1, place: d2, impedance: 8 ohm}")
        .finds("speaker-run-ends-elsewhere");
    zone("speaker-16-2", "{run: r1, place: d1, impedance: 8 ohm}")
        .findsNo("speaker-run-ends-elsewhere");
    zone("speaker-16-2", "{run: r1, place: d2, count: 2, impedance: 8 ohm}")
        .findsNo("speaker-run-ends-elsewhere");
  }

  @Test
  void aRunFeedsOneZone() {
    String first = "- {id: z1, name: Den, kind: audio, speakers: [{run: r1, impedance: 8 ohm}";
    house()
        .with("runs", run("speaker-16-4"))
        .with(
            "zones",
            first + "]}",
            "- {id: z2, name: Hall, kind: audio, speakers: [{run: ¶r1, impedance: 8 ohm}]}")
        .finds("run-in-two-zones");
    house()
        .with("runs", run("speaker-16-4"))
        .with("zones", first + ", {run: r1, impedance: 8 ohm}]}")
        .findsNo("run-in-two-zones");
  }

  @Test
  void aConstantVoltageLineHasTaps() {
    String start = "- {id: z1, name: Den, kind: audio, line_voltage: 70.7 V, speakers: [";
    house()
        .with("runs", run("speaker-16-2"))
        .with("zones", start + "¶{run: r1, impedance: 500 ohm}]}")
        .finds("tap-not-recorded");
    house()
        .with("runs", run("speaker-16-2"))
        .with("zones", start + "{run: r1, impedance: 500 ohm, power: 10 W}]}")
        .findsNo("tap-not-recorded");
  }

  @Test
  void aSpeakerOnTwoConductorsHasOneForEachPole() {
    zone("speaker-16-2", "{run: r1, impedance: 8 ohm, conductors_in_parallel: ¶2}")
        .finds("more-conductors-than-there-are");
    zone("speaker-16-4", "{run: r1, impedance: 8 ohm, conductors_in_parallel: 2}")
        .findsNo("more-conductors-than-there-are");
  }
}
