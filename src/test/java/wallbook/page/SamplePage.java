package wallbook.page;

import java.nio.charset.StandardCharsets;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import wallbook.AllWords;
import wallbook.Jobs;
import wallbook.assess.Assessments;
import wallbook.assess.Assessor;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.OutlookAssessor;
import wallbook.compose.Composition;
import wallbook.compose.Discretion;
import wallbook.compose.Issue;
import wallbook.compose.disclosure.DisclosedJob;
import wallbook.compose.disclosure.DisclosureRules;
import wallbook.compose.disclosure.Recipient;
import wallbook.compose.page.PageComposer;
import wallbook.compose.page.PageView;
import wallbook.record.Job;
import wallbook.render.DocumentFacts;
import wallbook.render.PageRenderer;
import wallbook.render.PaperSize;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** Offline pages of jobs, made as the program makes them. */
final class SamplePage {
  static final Wording ENGLISH =
      new Wording(Locale.US, AllWords.ENGLISH, UnitSystem.FEET_AND_INCHES);
  static final Wording SPANISH =
      new Wording(Locale.forLanguageTag("es-US"), AllWords.SPANISH, UnitSystem.METRIC);

  private static final byte[] RECORD = "format: 1\n".getBytes(StandardCharsets.UTF_8);
  private static final Map<String, PageView> VIEWS = new ConcurrentHashMap<>();

  private static final Map<String, String> PAGES = new ConcurrentHashMap<>();

  private SamplePage() {}

  /** The view of a sample job; each is composed once. */
  static PageView view(String sample, Recipient recipient) {
    return VIEWS.computeIfAbsent(
        sample + recipient, key -> view(Jobs.sample(sample), recipient, ENGLISH));
  }

  static PageView view(Job job, Recipient recipient, Wording wording) {
    Assessments assessments = new Assessor(Jobs.TABLES).assess(job);
    Outlook outlook = new OutlookAssessor(Jobs.TABLES).assess(job, assessments);
    Composition composition =
        new Composition(job, List.of(), assessments, outlook, List.of(), wording);
    DisclosedJob disclosed =
        DisclosedJob.of(
            job,
            new DisclosureRules(Jobs.TABLES),
            recipient,
            new Discretion(job, wording)::isTellable);
    return new PageComposer(composition, disclosed, recipient).compose();
  }

  static String html(Job job, PageView view, Wording wording) {
    try {
      return new String(
          new PageRenderer(TemplateSource.carried(), wording)
              .render(view, facts(job, wording), RECORD),
          StandardCharsets.UTF_8);
    } catch (TemplateProblem e) {
      throw new AssertionError(e);
    }
  }

  static DocumentFacts facts(Job job, Wording wording) {
    return new DocumentFacts(
        job.facts().title(),
        wording.say("page.title"),
        wording.locale().toLanguageTag(),
        Integer.toString(job.facts().revision()),
        Issue.date(job.facts()).orElse(LocalDate.of(2026, 1, 1)),
        PaperSize.LETTER,
        "test",
        job.facts().invented().orElse(false));
  }

  /** The page of a sample job; each is made once. */
  static String html(String sample, Recipient recipient) {
    return PAGES.computeIfAbsent(
        sample + recipient, key -> html(Jobs.sample(sample), view(sample, recipient), ENGLISH));
  }
}
