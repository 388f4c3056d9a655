package wallbook.assess.copper;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import wallbook.assess.Assessment;
import wallbook.assess.Verdict;
import wallbook.record.PairCategory;

/** What must hold for every run, whatever its length, temperature and category. */
class PairPropertiesTest {
  private static final List<Verdict> BEST_FIRST =
      List.of(Verdict.WITHIN, Verdict.CONDITIONAL, Verdict.BEYOND);

  private static Map<String, Verdict> carried(String cable, int metres, int celsius) {
    return PairJobs.assess(
            PairJobs.job(cable, "length: %d m\nhottest: %d °C".formatted(metres, celsius)))
        .stream()
        .filter(a -> BEST_FIRST.contains(a.verdict()))
        .filter(a -> !a.topic().equals("pairs.length.hottest"))
        .collect(Collectors.toMap(Assessment::topic, Assessment::verdict));
  }

  private static void assertNeverBetter(Map<String, Verdict> good, Map<String, Verdict> bad) {
    good.forEach(
        (topic, verdict) ->
            assertTrue(
                BEST_FIRST.indexOf(bad.get(topic)) >= BEST_FIRST.indexOf(verdict),
                () -> topic + ": " + verdict + " became " + bad.get(topic)));
  }

  @Property(tries = 60)
  void longerNeverCarriesMore(
      @ForAll PairCategory category,
      @ForAll @IntRange(min = 1, max = 150) int metres,
      @ForAll @IntRange(min = 1, max = 40) int more,
      @ForAll @IntRange(min = 15, max = 60) int celsius) {
    assertNeverBetter(
        carried(category.word(), metres, celsius),
        carried(category.word(), metres + more, celsius));
  }

  @Property(tries = 60)
  void hotterNeverReachesFurther(
      @ForAll PairCategory category,
      @ForAll @IntRange(min = 1, max = 110) int metres,
      @ForAll @IntRange(min = 10, max = 60) int celsius,
      @ForAll @IntRange(min = 1, max = 20) int more) {
    assertNeverBetter(
        carried(category.word(), metres, celsius),
        carried(category.word(), metres, celsius + more));
  }

  @Property(tries = 40)
  void aHigherCategoryNeverCarriesLessEthernet(
      @ForAll @IntRange(min = 1, max = 110) int metres,
      @ForAll @IntRange(min = 10, max = 65) int celsius) {
    Map<String, Verdict> five = ethernet(carried("cat5e", metres, celsius));
    Map<String, Verdict> six = ethernet(carried("cat6", metres, celsius));
    Map<String, Verdict> sixA = ethernet(carried("cat6a", metres, celsius));
    assertNeverBetter(six, five);
    assertNeverBetter(sixA, six);
  }

  /** Only the applications: the highest may be a sure one below a faster perhaps. */
  private static Map<String, Verdict> ethernet(Map<String, Verdict> carried) {
    return carried.entrySet().stream()
        .filter(e -> e.getKey().startsWith("pairs.ethernet."))
        .filter(e -> !e.getKey().endsWith(".highest"))
        .collect(Collectors.toMap(Map.Entry::getKey, Map.Entry::getValue));
  }
}
