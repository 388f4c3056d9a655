package wallbook;

import java.lang.reflect.RecordComponent;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.OutlookAssessor;
import wallbook.assess.outlook.WishAssessor;
import wallbook.check.Checks;
import wallbook.compose.Composition;
import wallbook.compose.DocumentPlan;
import wallbook.record.Job;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** View models of documents for tests. */
public final class Composed {
  public static final Wording WORDING =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES);

  private static final Checks CHECKS = new Checks(Jobs.TABLES);
  private static final Assessor ASSESSOR = new Assessor(Jobs.TABLES);
  private static final OutlookAssessor OUTLOOK = new OutlookAssessor(Jobs.TABLES);
  private static final WishAssessor WISHES = new WishAssessor(Jobs.TABLES);

  private Composed() {}

  /** What documents of a job are composed from. */
  public static Composition of(Job job) {
    return of(job, ASSESSOR.assess(job));
  }

  /** The same with assessments made before. */
  public static Composition of(Job job, Assessments assessments) {
    Outlook outlook = OUTLOOK.assess(job, assessments);
    return new Composition(
        job,
        CHECKS.check(job),
        assessments,
        outlook,
        WISHES.answers(job, assessments, outlook),
        WORDING);
  }

  public static Assessments assess(Job job) {
    return ASSESSOR.assess(job);
  }

  /** Every record of a document's view model, outer ones first. */
  public static List<Record> records(DocumentPlan plan, Composition composition) {
    List<Record> found = new ArrayList<>();
    collect(plan.view().apply(composition), found);
    return found;
  }

  private static void collect(Object value, List<Record> into) {
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(inner -> collect(inner, into));
    } else if (value instanceof Collection<?> items) {
      items.forEach(item -> collect(item, into));
    } else if (value instanceof Map<?, ?> map) {
      map.values().forEach(item -> collect(item, into));
    } else if (value instanceof Record view
        && view.getClass().getPackageName().startsWith("wallbook.compose")) {
      into.add(view);
      for (RecordComponent component : view.getClass().getRecordComponents()) {
        collect(value(view, component), into);
      }
    }
  }

  /** The texts of a record itself, also of its lists and optionals, not of records in it. */
  public static Stream<String> texts(Record view) {
    return Arrays.stream(view.getClass().getRecordComponents())
        .map(component -> value(view, component))
        .flatMap(Composed::texts);
  }

  private static Stream<String> texts(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.stream().flatMap(Composed::texts);
    } else if (value instanceof Collection<?> items) {
      return items.stream().flatMap(Composed::texts);
    }
    return value instanceof String text ? Stream.of(text) : Stream.empty();
  }

  /** The value of a component, also of a record that only its package sees. */
  public static Object value(Record view, RecordComponent component) {
    try {
      component.getAccessor().setAccessible(true);
      return component.getAccessor().invoke(view);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(component.toString(), e);
    }
  }
}
