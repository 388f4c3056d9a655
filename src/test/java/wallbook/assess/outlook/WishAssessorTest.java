package wallbook.assess.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static wallbook.assess.outlook.UpgradeHouse.by;
import static wallbook.assess.outlook.UpgradeHouse.conditions;
import static wallbook.assess.outlook.UpgradeHouse.firstOf;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;
import wallbook.assess.Verdict;
import wallbook.record.Job;
import wallbook.wording.Phrase;

class WishAssessorTest {
  private static final WishAssessor WISHES = new WishAssessor(Jobs.TABLES);

  @Test
  void aReadyCableGoesBeforeOneToFinishAndASharedOneLast() {
    WishAnswer answer =
        new UpgradeHouse()
            .run("open", "cat6", "den-data", "coiled", "dark", "length: 60 ft")
            .run("busy", "cat6", "den-data", "terminated", "in_service", "length: 60 ft")
            .dark("ready", "cat6", "den-data")
            .in("den", "more-wifi");

    // What is sure goes before what is conditional, so that a cable to finish goes before a shared.
    assertEquals(List.of("ready", "open", "busy"), firstOf(answer));
  }

  @Test
  void whatIsSureGoesBeforeWhatIsConditionalWhateverTheWork() {
    List<Way> ways =
        new UpgradeHouse()
            .run("busy", "cat6", "den-data", "terminated", "in_service", "length: 60 ft")
            .run("open", "cat6", "den-data", "coiled", "dark", "length: 60 ft")
            .in("den", "more-wifi")
            .ways();

    assertEquals(
        List.of(Verdict.WITHIN, Verdict.CONDITIONAL), ways.stream().map(Way::verdict).toList());
  }

  @Test
  void thePlaceAskedAboutGoesBeforeElsewhereInItsRoom() {
    UpgradeHouse house =
        new UpgradeHouse().dark("tv", "cat6", "den-tv").dark("data", "cat6", "den-data");

    assertEquals(List.of("data", "tv"), firstOf(house.at("den-data", "more-wifi")));
    assertEquals(List.of("tv", "data"), firstOf(house.at("den-tv", "more-wifi")));
  }

  @Test
  void aPlaceMeantForTheWishGoesBeforeElsewhereInTheRoom() {
    UpgradeHouse house =
        new UpgradeHouse().dark("data", "cat6", "den-data").dark("ap", "cat6", "den-ap");

    assertEquals(List.of("ap", "data"), firstOf(house.in("den", "more-wifi")));
  }

  @Test
  void aCableInServiceIsNeverBetterThanConditional() {
    Way way =
        new UpgradeHouse()
            .run(
                "busy",
                "cat6",
                "den-data",
                "terminated",
                "in_service",
                "length: 60 ft, serves: desk")
            .in("den", "more-wifi")
            .ways()
            .get(0);

    assertEquals(Verdict.CONDITIONAL, way.verdict());
    assertEquals(List.of("outlook.condition.shared"), conditions(way));
  }

  @Test
  void speakerWireInServiceIsNotShared() {
    WishAnswer answer =
        new UpgradeHouse()
            .run("busy", "speaker-16-2", "den-data", "terminated", "in_service", "length: 30 ft")
            .in("den", "music-in-one-more-room");

    assertEquals(List.of(), answer.ways());
  }

  @Test
  void coaxIsSharedOnlyForWhatItCarriesAlready() {
    String systems =
        """
        systems:
          - {id: tv, name: Off-air, kind: off_air}
          - {id: surround, name: Surround, kind: surround_primary}
        """;
    UpgradeHouse house =
        new UpgradeHouse()
            .run(
                "aerial",
                "series-6",
                "den-tv",
                "terminated",
                "in_service",
                "length: 60 ft, system: tv")
            .run(
                "bass",
                "series-6",
                "den-tv",
                "terminated",
                "in_service",
                "length: 60 ft, system: surround")
            .with(systems);

    assertEquals(List.of("aerial"), firstOf(house.in("den", "second-screen")));
  }

  @Test
  void fibreIsCombinedWithPowerOverACableAtTheSamePlace() {
    WishAnswer answer =
        new UpgradeHouse()
            .run("light", "om3-2", "den-ap", "coiled", "dark", "length: 60 ft")
            .run("power", "cat6", "den-ap", "terminated", "in_service", "length: 60 ft")
            .dark("elsewhere", "cat6", "den-data")
            .in("den", "more-wifi");

    Way way = by(answer, "access-point-fibre").get(0);

    assertEquals(List.of("light", "power"), way.legs().stream().map(Leg::subject).toList());
    assertEquals(Effort.FINISH_ENDS, way.effort());
  }

  @Test
  void fibreWithoutACableBesideItNeedsASupplyOfItsOwn() {
    WishAnswer answer =
        new UpgradeHouse()
            .run("light", "om3-2", "den-ap", "coiled", "dark", "length: 60 ft")
            .in("den", "more-wifi");

    assertEquals(List.of(), by(answer, "access-point-fibre"));
    assertEquals(
        List.of("outlook.condition.local-supply"),
        conditions(by(answer, "access-point-fibre-and-supply").get(0)));
  }

  @Test
  void aLesserMeansIsNotToldOfACableThatABetterOneTakes() {
    WishAnswer answer =
        new UpgradeHouse()
            .run("light", "om3-2", "den-ap", "coiled", "dark", "length: 60 ft")
            .dark("power", "cat6", "den-ap")
            .in("den", "more-wifi");

    assertEquals(1, by(answer, "access-point-fibre").size());
    assertEquals(List.of(), by(answer, "access-point-fibre-and-supply"));
  }

  @Test
  void shadesTakeTheirSupplyAndTheirControlAtTheSameWindow() {
    WishAnswer answer =
        new UpgradeHouse()
            .run(
                "supply",
                "power-16-4",
                "den-shade",
                "coiled",
                "dark",
                "length: 40 ft, feed: {voltage: 24 V, current: 1 A}")
            .run("control", "cat6", "den-shade", "coiled", "dark", "length: 40 ft")
            .dark("far-off", "cat6", "den-data")
            .in("den", "motorised-shades");

    Way best = answer.ways().get(0);

    assertEquals("supply-and-control", best.means());
    assertEquals(List.of("supply", "control"), best.legs().stream().map(Leg::subject).toList());
    assertFalse(firstOf(answer).contains("far-off"), "a plate is no place for a shade");
  }

  @Test
  void aStandInServesWhereItsCableIsDead() {
    WishAnswer answer =
        new UpgradeHouse()
            .run("dead", "cat6", "den-ap", "unknown", "damaged", "length: 60 ft, stand_in: new")
            .dark("new", "cat6", "den-ap")
            .in("den", "more-wifi");

    assertEquals(List.of("new"), firstOf(answer));
    assertEquals(Optional.of("new"), answer.obstacles().get(0).standIn());
    assertEquals("pairs.damaged", answer.obstacles().get(0).reason().key());
  }

  @Test
  void aMissingLengthIsNamedAndNothingClaimed() {
    WishAnswer answer =
        new UpgradeHouse()
            .run("r", "cat6", "den-data", "terminated", "dark", "")
            .in("den", "music-in-one-more-room");

    Way way = answer.ways().get(0);

    assertEquals(Verdict.NOT_STATED, way.verdict());
    assertEquals("pairs.missing.length", way.decisive().missing().get(0).key());
  }

  @Test
  void aCableIsPulledThroughAProvedConduit() {
    WishAnswer answer =
        new UpgradeHouse().proved("c", "head: rack", "place: den-tv").in("den", "more-wifi");

    Way way = answer.ways().get(0);

    assertEquals("new-cable", way.means());
    assertEquals(Verdict.WITHIN, way.verdict());
    assertEquals(Effort.PULL_CABLE, way.effort());
    assertEquals(List.of(), way.conditions());
  }

  @Test
  void aConduitNeverProvedIsConditional() {
    Way way =
        new UpgradeHouse()
            .conduit("c", "head: rack", "place: den-tv", "unknown")
            .in("den", "more-wifi")
            .ways()
            .get(0);

    assertEquals(Verdict.CONDITIONAL, way.verdict());
    assertEquals(Effort.PROVE_AND_PULL, way.effort());
  }

  @Test
  void aCrushedConduitIsAnObstacleAndNoWay() {
    WishAnswer answer =
        new UpgradeHouse()
            .conduit("c", "head: rack", "place: den-tv", "crushed")
            .in("den", "more-wifi");

    assertEquals(List.of(), answer.ways());
    assertEquals(List.of("c"), answer.obstacles().stream().map(Obstacle::subject).toList());
    assertEquals("conduit.clearance.crushed", answer.obstacles().get(0).reason().key());
  }

  @Test
  void twoConduitsThatEndInTheAtticMakeOneWay() {
    Way way =
        new UpgradeHouse()
            .proved("riser", "place: study-desk", "space: attic")
            .proved("chase", "head: rack", "space: attic")
            .in("study", "more-wifi")
            .ways()
            .get(0);

    assertEquals(List.of("riser", "chase"), way.legs().stream().map(Leg::subject).toList());
    assertEquals(List.of("outlook.condition.across"), conditions(way));
  }

  @Test
  void aChainOfConduitsIsAsGoodAsItsWorst() {
    Way way =
        new UpgradeHouse()
            .conduit("riser", "place: study-desk", "space: attic", "unknown")
            .proved("chase", "head: rack", "space: attic")
            .in("study", "more-wifi")
            .ways()
            .get(0);

    assertEquals(Effort.PROVE_AND_PULL, way.effort());
    assertEquals("riser", way.decisive().subject());
  }

  @Test
  void aConduitThatEndsShortOfHomeSaysSo() {
    Way way =
        new UpgradeHouse()
            .proved("c", "place: garden-stub", "space: den")
            .in("garden", "music-outside")
            .ways()
            .get(0);

    assertEquals(List.of("outlook.condition.gap"), conditions(way));
  }

  @Test
  void aConduitThatLeadsFromTheRoomIntoTheGardenIsNoWayHome() {
    WishAnswer answer =
        new UpgradeHouse().proved("c", "space: den", "place: garden-stub").in("den", "more-wifi");

    assertEquals(List.of(), answer.ways());
  }

  @Test
  void onlyCableForWetPlacesGoesIntoAConduitOutdoors() {
    Way way =
        new UpgradeHouse()
            .proved("c", "head: rack", "place: garden-stub")
            .in("garden", "one-more-camera")
            .ways()
            .get(0);

    assertEquals("cable.cat6-outdoor", way.main().service());
  }

  @Test
  void theConduitToTheEntranceIsLeftToTheProviderFirst() {
    UpgradeHouse house = new UpgradeHouse().proved("c", "head: rack", "head: entrance");

    assertEquals(
        List.of("outlook.condition.kept-for-provider"),
        conditions(house.in("util", "move-the-rack").ways().get(0)));
    assertEquals(List.of(), conditions(house.inTheHouse("faster-internet").ways().get(0)));
  }

  @Test
  void aFinishedVideoCableNeedsAConduitThatItsPlugPasses() {
    Way way =
        by(
                new UpgradeHouse()
                    .proved("c", "head: rack", "place: den-tv")
                    .at("den-tv", "better-picture"),
                "finished-video-cable")
            .get(0);

    assertEquals("conduit.head.video-plug", way.decisive().topic());
    assertEquals(1, way.figures().size(), "the thickest cable that fits");
  }

  @Test
  void fasterInternetLooksBetweenTheEntranceAndWhereCablesComeHome() {
    WishAnswer answer =
        new UpgradeHouse()
            .toEntrance("line", "cat6", "dark")
            .dark("room", "cat6", "den-data")
            .inTheHouse("faster-internet");

    assertEquals(List.of("line"), firstOf(answer));
  }

  @Test
  void aGardenLineSaysHowMuchFurtherItGoes() {
    WishAnswer answer = gardenLine("30 ft").in("garden", "music-outside");

    Way way = by(answer, "speaker-line").get(0);

    assertEquals(Effort.EXTEND_LINE, way.effort());
    assertEquals(3, way.figures().size(), "in three gauges");
    assertTrue(way.figures().stream().allMatch(f -> f.basis().value().isPresent()));
  }

  @Test
  void aGardenLineThatIsUsedUpServesOnlyWhereItComesOut() {
    // 90 ft of 16 AWG there and back are 0.74 ohm at 20 °C (ASTM B258: 4.016 ohm/1000 ft, 2 % for
    // strands), 9.2 % of 8 ohm: beyond 5 %, within 10 %.
    Way way = by(gardenLine("90 ft").in("garden", "music-outside"), "speaker-line").get(0);

    assertEquals("speaker-planned-background", way.main().service());
    assertEquals(List.of("outlook.condition.no-further"), conditions(way));
    assertEquals(List.of(), way.figures());
  }

  private static UpgradeHouse gardenLine(String length) {
    return new UpgradeHouse()
        .run("g", "speaker-16-2-burial", "garden-stub", "coiled", "dark", "length: " + length)
        .with(
            """
            stub_outs:
              - {id: so, place: garden-stub, coiled: [{run: g, length: 10 ft}], zone: z, line_still_to_lay: a line}
            zones:
              - {id: z, name: Garden, kind: landscape, speakers: [{run: g, impedance: 8 ohm}]}
            """);
  }

  @Test
  void aCableThatLacksTheMarkForItsSurroundingsIsConditional() {
    Way way =
        new UpgradeHouse()
            .with(
                """
                cables:
                  - {id: bare, name: Bare cable, medium: balanced_pair, category: cat6, pairs: 4, gauge: 23, outdoor: [wet_location]}
                """)
            .run(
                "r",
                "bare",
                "garden-stub",
                "terminated",
                "dark",
                "length: 60 ft, environments: [outdoor_exposed]")
            .in("garden", "one-more-camera")
            .ways()
            .get(0);

    assertEquals(List.of("outlook.condition.unmarked"), conditions(way));
    assertEquals(Verdict.CONDITIONAL, way.verdict());
  }

  @Test
  void whereNothingReachesThereIsNoWayButWhatMayDoWithoutWireIsNamed() {
    WishAnswer answer = new UpgradeHouse().in("study", "more-wifi");

    assertEquals(List.of(), answer.ways());
    assertEquals(
        Optional.of("outlook.alternative.more-wifi"), answer.alternative().map(Phrase::key));
  }

  @Test
  void movingTheRackTellsHowManyCablesEndThereAndTheirSlack() {
    WishAnswer answer = new UpgradeHouse().dark("r", "cat6", "den-data").in("den", "move-the-rack");

    assertEquals(
        List.of("outlook.fact.rack-cables.one", "outlook.fact.rack-slack-unknown.one"),
        answer.facts().stream().map(Phrase::key).toList());
  }

  @Test
  void aRoomThatHasMusicIsNotOneMoreRoom() {
    Job job =
        new UpgradeHouse()
            .dark("r", "speaker-16-2", "den-data")
            .with("zones: [{id: z, name: Den, kind: audio, spaces: [den], speakers: []}]\n")
            .job();

    assertEquals(
        List.of(new Target.InSpace("study")),
        WISHES.targets(job, WISHES.wish("music-in-one-more-room").orElseThrow()));
  }

  @Test
  void aSpaceWithAPlaceMeantForTheWishMayHaveIt() {
    Job job = new UpgradeHouse().job();

    assertEquals(
        List.of(new Target.InSpace("den")),
        WISHES.targets(job, WISHES.wish("better-picture").orElseThrow()));
    assertEquals(
        List.of(new Target.InSpace("garden")),
        WISHES.targets(job, WISHES.wish("music-outside").orElseThrow()));
    assertEquals(
        List.of(new Target.House()),
        WISHES.targets(job, WISHES.wish("faster-internet").orElseThrow()));
  }
}
