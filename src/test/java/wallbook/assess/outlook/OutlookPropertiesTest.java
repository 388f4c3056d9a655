package wallbook.assess.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import wallbook.Jobs;

class OutlookPropertiesTest {
  private static final String[] CABLES = {
    "cat5e",
    "cat6",
    "cat6a",
    "om3-2",
    "om4-2",
    "os2-2",
    "speaker-16-2",
    "speaker-14-4",
    "power-16-2"
  };

  @Property(tries = 60)
  void aLongerRunNeverGainsAService(
      @ForAll @IntRange(min = 0, max = 8) int cable,
      @ForAll @IntRange(min = 1, max = 700) int feet,
      @ForAll @IntRange(min = 1, max = 700) int more) {
    Set<String> shorter = possible(CABLES[cable], feet);
    Set<String> longer = possible(CABLES[cable], feet + more);

    longer.removeAll(shorter);

    assertEquals(new TreeSet<String>(), longer);
  }

  private static Set<String> possible(String cable, int feet) {
    return new UpgradeHouse()
            .run("r", cable, "den-data", "terminated", "dark", "length: " + feet + " ft")
            .outlook()
            .of("r")
            .stream()
            .filter(Prospect::possible)
            .map(Prospect::service)
            .collect(Collectors.toCollection(TreeSet::new));
  }

  @Property(tries = 40)
  void aDeadRunHasNoService(
      @ForAll @IntRange(min = 0, max = 8) int cable,
      @ForAll @IntRange(min = 1, max = 300) int feet,
      @ForAll boolean abandoned) {
    Outlook outlook =
        new UpgradeHouse()
            .run(
                "r",
                CABLES[cable],
                "den-data",
                "cut",
                abandoned ? "abandoned" : "damaged",
                "length: " + feet + " ft")
            .outlook();

    assertTrue(outlook.of("r").stream().noneMatch(p -> p.possible() || p.equipmentDecides()));
    assertTrue(!outlook.whyNothing("r").isEmpty());
  }

  @Property(tries = 20)
  void aCrushedOrBlockedConduitOffersNothingForAnyWish(
      @ForAll @IntRange(min = 0, max = 9) int wish, @ForAll boolean crushed) {
    UpgradeHouse house =
        new UpgradeHouse()
            .conduit("c", "head: rack", "place: den-tv", crushed ? "crushed" : "blocked");
    WishAssessor wishes = new WishAssessor(Jobs.TABLES);

    WishAnswer answer = house.in("den", wishes.wishes().get(wish).name());

    assertEquals(0, answer.ways().size());
    assertTrue(house.outlook().of("c").stream().noneMatch(Prospect::possible));
  }
}
