package wallbook.assess.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Assessor;
import wallbook.record.Cable;
import wallbook.reference.Row;
import wallbook.reference.Tables;

/** The tables of the outlook hold together with the assessors, the catalogue and the words. */
class OutlookTablesTest {
  private static final Tables TABLES = Jobs.TABLES;

  @Test
  void everyTopicOfAServiceIsAnsweredInASampleHouse() {
    Set<String> answered = new HashSet<>();
    Assessor assessor = new Assessor(TABLES);
    Stream.of("lakeside", "flat")
        .map(Jobs::sample)
        .flatMap(job -> assessor.assess(job).all().stream())
        .map(Assessment::topic)
        .forEach(answered::add);

    TreeSet<String> dead = new TreeSet<>(texts("outlook-services", "topic"));
    dead.removeAll(answered);

    assertEquals(new TreeSet<String>(), dead);
  }

  @Test
  void meansAskOnlyForServicesOfTheTable() {
    TreeSet<String> unknown = new TreeSet<>();
    for (Means means : Means.all(TABLES)) {
      means.legs().forEach(leg -> leg.services().forEach(unknown::addAll));
      means.connector().ifPresent(unknown::add);
    }
    unknown.removeAll(texts("outlook-services", "service"));

    assertEquals(new TreeSet<String>(), unknown);
  }

  @Test
  void meansPullOnlyCablesThatConduitsAreAskedAbout() {
    TreeSet<String> unknown = new TreeSet<>();
    Means.all(TABLES).forEach(means -> unknown.addAll(means.cables()));
    unknown.removeAll(texts("outlook-cables", "cable"));

    assertEquals(new TreeSet<String>(), unknown);
  }

  @Test
  void cablesThatConduitsAreAskedAboutAreInTheCatalogue() {
    TreeSet<String> unknown = new TreeSet<>(texts("outlook-cables", "cable"));
    new UpgradeHouse().job().cables().stream().map(Cable::id).forEach(unknown::remove);

    assertEquals(new TreeSet<String>(), unknown);
  }

  @Test
  void everyWishHasMeansAndEveryMeansAWish() {
    assertEquals(
        new TreeSet<>(texts("outlook-wishes", "wish")),
        new TreeSet<>(texts("outlook-means", "wish")));
  }

  @Test
  void aMeansGivesWayOnlyToOneOfTheSameWish() {
    List<Means> all = Means.all(TABLES);
    for (Means means : all) {
      means
          .unless()
          .ifPresent(
              better ->
                  assertTrue(
                      all.stream()
                          .anyMatch(m -> m.wish().equals(means.wish()) && m.name().equals(better)),
                      means.name()));
    }
  }

  @Test
  void aMeansHasEitherLegsOrAConduit() {
    for (Means means : Means.all(TABLES)) {
      boolean pulls = !means.cables().isEmpty() || means.connector().isPresent();
      assertEquals(means.legs().isEmpty(), pulls, means.wish() + " " + means.name());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"en", "es"})
  void everyRowHasWords(String language) {
    var words = language.equals("en") ? AllWords.ENGLISH : AllWords.SPANISH;
    TreeSet<String> missing = new TreeSet<>();
    for (Row row : TABLES.table("outlook-services").rows()) {
      missing.add("outlook.service." + row.text("service"));
      for (String add : row.text("adds").split(" ")) {
        if (!add.isEmpty()) {
          missing.add("outlook.add." + add);
        }
      }
    }
    for (Means means : Means.all(TABLES)) {
      missing.add(means.words().key());
      means.conditions().forEach(phrase -> missing.add(phrase.key()));
      means.notes().forEach(phrase -> missing.add(phrase.key()));
    }
    for (Wish wish : Wish.all(TABLES)) {
      missing.add(wish.words().key());
      if (wish.hasAlternative()) {
        missing.add("outlook.alternative." + wish.name());
      }
    }
    for (Effort effort : Effort.values()) {
      missing.add("effort." + effort.word());
    }
    for (Worker worker : Worker.values()) {
      missing.add("worker." + worker.word());
    }
    missing.removeAll(words.keySet());

    assertEquals(new TreeSet<String>(), missing);
  }

  private static List<String> texts(String table, String column) {
    return TABLES.table(table).rows().stream().map(row -> row.text(column)).toList();
  }
}
