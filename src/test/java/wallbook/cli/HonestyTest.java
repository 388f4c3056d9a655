package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.junit.jupiter.api.Order;
import org.junit.jupiter.api.Test;
import wallbook.AllWords;
import wallbook.Composed;
import wallbook.Jobs;
import wallbook.assess.Assessment;
import wallbook.assess.Assessments;
import wallbook.assess.Verdict;
import wallbook.compose.Composition;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.compose.TermView;
import wallbook.compose.result.ResultView;
import wallbook.read.RecordWriter;
import wallbook.record.Job;
import wallbook.render.TaggedText;
import wallbook.wording.Phrase;

/**
 * No document says that something can be done unless it was computed: every statement of ability in
 * print is one of an assessment, or one of the listed explanations that claim nothing of this
 * house.
 */
@Order(10)
class HonestyTest {
  private static final Pattern ABILITY =
      Pattern.compile(
          "\\b(can carry|carries|could carry|will carry|passes|fits|complies|meets|suitable"
              + "|capable|is enough|supports|certified|within)\\b",
          Pattern.CASE_INSENSITIVE);

  private static final Path EXPLANATIONS =
      Path.of("src/test/resources/wallbook/cli/explanations.txt");

  @Test
  void everyResultInPrintIsThatOfAnAssessment() {
    for (String sample : List.of("flat", "lakeside")) {
      Job job = Jobs.sample(sample);
      Assessments assessments = Composed.assess(job);
      Set<List<Object>> computed =
          assessments.all().stream().map(HonestyTest::computed).collect(Collectors.toSet());
      Composition composition = Composed.of(job, assessments);
      for (DocumentPlan plan : Documents.all()) {
        for (Record view : Composed.records(plan, composition)) {
          if (view instanceof ResultView result) {
            assertTrue(computed.contains(printed(result)), () -> plan.file() + ": " + result);
          }
        }
      }
    }
  }

  private static List<Object> computed(Assessment assessment) {
    return List.of(
        Composed.WORDING.say(assessment.asked()),
        verdict(assessment.verdict()),
        assessment.value().map(Composed.WORDING::print),
        assessment.limit().map(Composed.WORDING::print),
        assessment.limitedBy().map(Composed.WORDING::say));
  }

  private static List<Object> printed(ResultView result) {
    return List.of(
        result.asked(), result.verdict(), result.value(), result.limit(), result.limitedBy());
  }

  private static String verdict(Verdict verdict) {
    return Composed.WORDING.say(
        "verdict." + verdict.name().toLowerCase(Locale.ROOT).replace('_', '-'));
  }

  @Test
  void everyWordOfAbilityInPrintIsComputedOrExplains() throws IOException {
    Job job = Jobs.sample("lakeside");
    Set<String> allowed = new HashSet<>();
    Composed.assess(job).all().forEach(a -> said(a).forEach(allowed::add));
    for (String key : explanations()) {
      allowed.addAll(List.of(plain(AllWords.ENGLISH.get(key)).split("\\{[a-zA-Z]+}")));
    }
    allowed.addAll(textsOf(job));
    List<String> longestFirst =
        allowed.stream()
            .map(HonestyTest::flat)
            .filter(text -> ABILITY.matcher(text).find())
            .sorted(Comparator.comparing(String::length).reversed().thenComparing(text -> text))
            .toList();

    Set<String> claims = new TreeSet<>();
    for (Path pdf : BuiltSamples.files("lakeside")) {
      if (pdf.toString().endsWith(".pdf")) {
        claims.addAll(claims(pdf, longestFirst));
      }
    }
    assertEquals(
        Set.of(), claims, "said of an ability, neither computed nor listed in " + EXPLANATIONS);
  }

  private static Set<String> claims(Path pdf, List<String> allowed) throws IOException {
    String text;
    try (PDDocument document = Loader.loadPDF(Files.readAllBytes(pdf))) {
      text = flat(TaggedText.of(document));
    }
    for (String known : allowed) {
      text = text.replace(known, " \u00b7 ");
    }
    Set<String> claims = new TreeSet<>();
    for (Matcher found = ABILITY.matcher(text); found.find(); ) {
      int from = Math.max(0, found.start() - 60);
      int to = Math.min(text.length(), found.end() + 60);
      claims.add(pdf.getFileName() + ": " + text.substring(from, to));
    }
    return claims;
  }

  private static Stream<String> said(Assessment assessment) {
    List<Phrase> phrases = new ArrayList<>(List.of(assessment.asked()));
    assessment.limitedBy().ifPresent(phrases::add);
    phrases.addAll(assessment.assumptions());
    phrases.addAll(assessment.missing());
    Stream<String> source = Stream.of(assessment.source().citation());
    return Stream.concat(
        phrases.stream().map(Composed.WORDING::say).map(HonestyTest::plain), source);
  }

  /** Texts that the integrator wrote into the record; the documents quote them. */
  private static Set<String> textsOf(Job job) {
    Set<String> texts = new HashSet<>();
    Matcher quoted =
        Pattern.compile("\"((?:[^\"\\\\]|\\\\.)*)\"|: ([^\\[{\"\\n][^,}\\n]*)")
            .matcher(RecordWriter.text(job.record()));
    while (quoted.find()) {
      texts.add(
          quoted.group(1) == null ? quoted.group(2) : quoted.group(1).replaceAll("\\\\(.)", "$1"));
    }
    return texts;
  }

  private static List<String> explanations() throws IOException {
    try (Stream<String> lines = Files.lines(EXPLANATIONS)) {
      return lines.filter(line -> !line.isBlank() && !line.startsWith("#")).toList();
    }
  }

  @Test
  void everyListedExplanationIsInUse() throws IOException {
    for (String key : explanations()) {
      assertTrue(AllWords.ENGLISH.containsKey(key), key);
      assertTrue(ABILITY.matcher(AllWords.ENGLISH.get(key)).find(), key);
    }
  }

  /** Words as they are printed, without the marks of Markdown. */
  private static String plain(String words) {
    return words.replaceAll("\\*\\*|(?<!\\w)_|_(?!\\w)", "");
  }

  private static String flat(String text) {
    return text.replaceAll("[\\s\u00a0]+", " ").replaceAll(" ([:;,.)])", "$1").strip();
  }

  /** Words that say yes, whatever document they stand in. */
  private static final Set<String> YES =
      Stream.of(
              "verdict.within",
              "verdict.conditional",
              "outlook.answer.within",
              "outlook.answer.conditional",
              "guide.fit.within",
              "guide.fit.conditional")
          .map(AllWords.ENGLISH::get)
          .collect(Collectors.toSet());

  /** Where documents say yes; explanations of the words themselves are left out. */
  private static List<String> yeses(Job job, Assessments assessments) {
    Composition composition = Composed.of(job, assessments);
    List<String> found = new ArrayList<>();
    for (DocumentPlan plan : Documents.all()) {
      for (Record view : Composed.records(plan, composition)) {
        if (!(view instanceof TermView) && Composed.texts(view).anyMatch(YES::contains)) {
          found.add(plan.file() + ": " + view);
        }
      }
    }
    return found;
  }

  @Test
  void noDocumentSaysYesIfNoAssessmentDoes() {
    Job job = Jobs.sample("lakeside");
    Assessments computed = Composed.assess(job);
    Assessments mute = new Assessments(computed.all().stream().map(HonestyTest::muted).toList());
    assertTrue(yeses(job, computed).size() > 20);
    assertEquals(List.of(), yeses(job, mute));
  }

  private static Assessment muted(Assessment assessment) {
    return assessment.holds()
        ? new Assessment(
            assessment.subject(),
            assessment.topic(),
            assessment.asked(),
            Verdict.NOT_STATED,
            Optional.empty(),
            assessment.limit(),
            Optional.empty(),
            Optional.empty(),
            assessment.assumptions(),
            List.of(),
            List.of(Phrase.of("not-recorded")),
            assessment.source())
        : assessment;
  }

  /** Topics whose answers rest on lengths, diameters, bores or readings. */
  private static final Pattern FROM_LENGTHS =
      Pattern.compile("(pairs|fibre|coax|speaker|wire|dc|conduit)\\..*");

  /** Of these the ones that rest on something else: wiring schemes, impedances, uses, supplies. */
  private static final Set<String> FROM_OTHER_FACTS =
      Set.of("dc.class-2", "pairs.use.telephone", "pairs.wiring", "speaker.load");

  private static Set<String> claimed(Job job) {
    return Composed.assess(job).all().stream()
        .filter(Assessment::holds)
        .map(Assessment::topic)
        .filter(FROM_LENGTHS.asMatchPredicate())
        .filter(topic -> !FROM_OTHER_FACTS.contains(topic))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void aRecordWithoutLengthsAndBoresClaimsNothing() {
    String text = RecordWriter.text(Jobs.sample("lakeside").record());
    String stripped =
        text.replaceAll("(?m)^ +(length|length_by|bore|trade_size|path): .*\\n", "")
            .replaceAll("(?m)^(tests|fibres):\\n(?: .*\\n)++", "");
    Job job = Jobs.read(stripped).soundPart().orElseThrow();
    assertTrue(job.runs().size() > 100);
    assertEquals(Set.of(), claimed(job));
    assertTrue(claimed(Jobs.sample("lakeside")).size() > 9);
  }
}
