package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Assessor;
import wallbook.assess.outlook.Target;
import wallbook.assess.outlook.Wish;
import wallbook.assess.outlook.WishAssessor;
import wallbook.compose.Composition;
import wallbook.record.Job;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.Wording;

/** An answer for one wish, which looks at some media only, is that of the whole house. */
class OneWishTest {
  private final WishAssessor assessor = new WishAssessor(Jobs.TABLES);

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void isAnsweredAsInTheWholeHouse(String sample) throws TemplateProblem {
    Reading reading = read(sample);
    Wording wording = Readers.OF_THE_RECORD.wording(reading.about(), TemplateSource.carried());
    Composition whole = Computation.of(reading, Jobs.TABLES, wording);
    for (Wish wish : assessor.wishes()) {
      Composition alone =
          Computation.ofMedia(reading, Jobs.TABLES, wording, job -> assessor.media(job, wish));
      List<Target> targets = targets(whole, wish);
      assertEquals(said(whole, wish, targets), said(alone, wish, targets), wish.name());
    }
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void leavesOutWhatItDoesNotRestOn(String sample) {
    Reading reading = read(sample);
    Set<String> media =
        assessor.media(reading.job().orElseThrow(), assessor.wish("more-wifi").orElseThrow());
    assertEquals(Set.of("pairs", "fibre", "conduit", "outdoor"), media);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void eachMediumIsCalledByTheFirstWordOfItsTopics(String sample) {
    Job job = read(sample).job().orElseThrow();
    Assessor media = new Assessor(Jobs.TABLES);
    Set<String> called = new HashSet<>();
    media
        .assess(job)
        .all()
        .forEach(a -> called.add(a.topic().substring(0, a.topic().indexOf('.'))));
    assertTrue(called.size() > 5, called::toString);
    for (String medium : called) {
      List<Assessment> alone = media.assessForUse(job, Set.of(medium)).all();
      assertFalse(alone.isEmpty(), medium);
      assertTrue(alone.stream().allMatch(a -> a.topic().startsWith(medium + ".")), medium);
    }
  }

  /** Where it may be had, and each place and space of the house. */
  private List<Target> targets(Composition composition, Wish wish) {
    List<Target> targets = new ArrayList<>(assessor.targets(composition.job(), wish));
    composition.job().places().forEach(place -> targets.add(new Target.AtPlace(place.id())));
    composition.job().spaces().forEach(space -> targets.add(new Target.InSpace(space.id())));
    return targets;
  }

  private String said(Composition composition, Wish wish, List<Target> targets) {
    StringWriter text = new StringWriter();
    new WishPrinter(composition, new PrintWriter(text))
        .print(
            wish,
            assessor.answers(
                composition.job(),
                composition.assessments(),
                composition.outlook(),
                wish,
                targets));
    return text.toString();
  }

  private static Reading read(String sample) {
    return Reading.of(Path.of("sample-jobs", sample, "job.yaml"), Jobs.TABLES);
  }
}
