package wallbook.assess.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.assess.Verdict;
import wallbook.quantity.Length;
import wallbook.wording.Phrase;

class OutlookAssessorTest {

  @Test
  void aDarkTerminatedCableIsPluggedIn() {
    Prospect network = find(new UpgradeHouse().dark("r", "cat6", "den-data"), "r", "network-10g");

    // IEEE 802.3 clause 55 with TIA TSB-155-A: 10GBASE-T on Category 6 to 37 m of channel.
    assertEquals(Verdict.WITHIN, network.verdict());
    assertEquals(Effort.PLUG_IN, network.effort());
    assertEquals(List.of(), network.first());
    assertEquals(List.of("outlook.add.network-equipment"), keys(network.adds()));
    assertEquals(List.of(Worker.HOMEOWNER), network.everyone());
  }

  @Test
  void anUnfinishedEndIsTheInstallersWorkFirst() {
    UpgradeHouse house =
        new UpgradeHouse().run("r", "cat6", "den-data", "coiled", "dark", "length: 60 ft");

    Prospect network = find(house, "r", "network-1g");

    assertEquals(Effort.FINISH_ENDS, network.effort());
    assertEquals(List.of("outlook.finish-ends.one"), keys(network.first()));
    assertEquals(List.of(Worker.HOMEOWNER, Worker.INSTALLER), network.everyone());
  }

  @Test
  void aCableInServiceIsShared() {
    UpgradeHouse house =
        new UpgradeHouse().run("r", "cat6", "den-data", "terminated", "in_service", "length: 9 m");

    Prospect network = find(house, "r", "network-1g");

    assertEquals(Effort.SHARE, network.effort());
    assertTrue(network.occupied());
    assertEquals(List.of("outlook.share.balanced_pair"), keys(network.first()));
  }

  @Test
  void theMostUsefulComesFirstAndWhatCannotBeLast() {
    List<Prospect> all = new UpgradeHouse().dark("r", "om3-2", "den-data").outlook().of("r");

    assertTrue(all.get(0).possible());
    assertFalse(all.get(all.size() - 1).possible());
    for (int i = 1; i < all.size(); i++) {
      if (all.get(i - 1).possible() && all.get(i).possible()) {
        assertTrue(all.get(i - 1).rank() >= all.get(i).rank());
      }
    }
  }

  @Test
  void whatCannotBeCarriedSaysWhy() {
    // IEEE 802.3 clause 52: 10GBASE-LR is written for single-mode fibre.
    Prospect longReach =
        find(new UpgradeHouse().dark("r", "om3-2", "den-data"), "r", "fibre-10g-lr");

    assertEquals(Verdict.BEYOND, longReach.verdict());
    assertEquals(
        Optional.of("fibre.limit.needs-single-mode"), longReach.blocker().map(Phrase::key));
  }

  @Test
  void whatIsNotRecordedIsNamedInsteadOfGuessed() {
    UpgradeHouse house = new UpgradeHouse().run("r", "cat6", "den-data", "terminated", "dark", "");

    Prospect network = find(house, "r", "network-1g");

    assertEquals(Verdict.NOT_STATED, network.verdict());
    assertEquals(Optional.of("pairs.missing.length"), network.blocker().map(Phrase::key));
    assertFalse(network.possible());
  }

  @Test
  void aDamagedCableCarriesNothingAndSaysWhy() {
    UpgradeHouse house =
        new UpgradeHouse()
            .run("r", "cat6", "den-data", "terminated", "damaged", "length: 60 ft")
            .run("s", "speaker-16-2", "den-data", "cut", "abandoned", "length: 60 ft");

    Outlook outlook = house.outlook();

    assertTrue(outlook.of("r").stream().noneMatch(p -> p.possible() || p.equipmentDecides()));
    assertEquals(List.of("pairs.damaged"), keys(outlook.whyNothing("r")));
    assertEquals(List.of("wire.limit.abandoned"), keys(outlook.whyNothing("s")));
  }

  @Test
  void aSoundCableHasNoReasonToCarryNothing() {
    assertEquals(
        List.of(), new UpgradeHouse().dark("r", "cat6", "den-data").outlook().whyNothing("r"));
  }

  @Test
  void coaxIsLeftToTheEquipmentForNoLimitIsPublished() {
    Prospect satellite = find(new UpgradeHouse().dark("r", "series-6", "den-tv"), "r", "satellite");

    assertTrue(satellite.equipmentDecides());
    assertFalse(satellite.possible());
    assertTrue(satellite.decisive().value().isPresent());
  }

  @Test
  void aLineThatWaitsAtAStubOutIsLaidOnByWhomTheRecordNames() {
    Prospect planned = find(gardenLine("line_by: electrician"), "g", "speaker-planned");

    assertEquals(Effort.EXTEND_LINE, planned.effort());
    assertEquals(List.of("outlook.extend-line"), keys(planned.first()));
    assertTrue(planned.everyone().contains(Worker.ELECTRICIAN));
  }

  @Test
  void aLineThatWaitsAtAStubOutSaysHowMuchFurtherItGoesInThickerWire() {
    Outlook outlook = gardenLine("").outlook();

    var thick = outlook.find("g", "line-further-12").orElseThrow().decisive().value().orElseThrow();
    var thin = outlook.find("g", "line-further-16").orElseThrow().decisive().value().orElseThrow();

    // ASTM B258: 12 AWG has 5.211 ohm/km and 16 AWG 13.17 ohm/km, so that it goes 2.53 times as
    // far.
    double ratio = ((Length) thick).inMetres() / ((Length) thin).inMetres();
    assertEquals(2.53, ratio, 0.01);
  }

  private static UpgradeHouse gardenLine(String by) {
    return new UpgradeHouse()
        .run("g", "speaker-16-4-burial", "garden-stub", "coiled", "dark", "length: 40 ft")
        .with(
            """
            stub_outs:
              - id: so
                place: garden-stub
                coiled: [{run: g, length: 10 ft}]
                zone: z
                line_still_to_lay: a line to the pear tree
                %s
            zones:
              - {id: z, name: Garden, kind: landscape, speakers: [{run: g, impedance: 8 ohm}]}
            """
                .formatted(by));
  }

  @Test
  void aProvedConduitTakesACableAsItIs() {
    UpgradeHouse house =
        new UpgradeHouse().proved("c", "head: rack", "place: den-tv").dark("r", "cat6", "den-data");

    Prospect cable = find(house, "c", "cable.cat6");

    assertEquals(Verdict.WITHIN, cable.verdict());
    assertEquals(Effort.PULL_CABLE, cable.effort());
    assertEquals(2, cable.bases().size(), "by cabling practice and by the code's table");
    assertEquals(List.of("outlook.new-string"), keys(cable.first()));
  }

  @Test
  void aConduitNeverProvedIsProvedFirst() {
    Prospect cable =
        find(
            new UpgradeHouse().conduit("c", "head: rack", "place: den-tv", "clear"),
            "c",
            "cable.cat6");

    assertEquals(Verdict.CONDITIONAL, cable.verdict());
    assertEquals(Effort.PROVE_AND_PULL, cable.effort());
    assertEquals("outlook.prove-conduit", cable.first().get(0).key());
  }

  @Test
  void aFireRatedOpeningIsSealedAgain() {
    UpgradeHouse house =
        new UpgradeHouse()
            .conduit("c", "head: rack", "place: den-tv", "clear\n    firestop: sealed at the wall");

    assertTrue(keys(find(house, "c", "cable.cat6").first()).contains("outlook.reseal"));
  }

  @Test
  void aConduitIsAskedAboutConnectorsToo() {
    Prospect plug =
        find(
            new UpgradeHouse().proved("c", "head: rack", "place: den-tv"),
            "c",
            "connector-video-plug");

    assertEquals(ServiceFamily.CONNECTOR, plug.family());
    assertEquals("conduit.head.video-plug", plug.decisive().topic());
  }

  private static Prospect find(UpgradeHouse house, String subject, String service) {
    return house.outlook().find(subject, service).orElseThrow();
  }

  private static List<String> keys(List<Phrase> phrases) {
    return phrases.stream().map(Phrase::key).toList();
  }
}
