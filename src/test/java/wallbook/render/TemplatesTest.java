package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.api.parallel.Isolated;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.quantity.Length;
import wallbook.wording.Phrase;

@Isolated("changes the default locale or time zone")
class TemplatesTest {
  record View(
      String name,
      Optional<String> remark,
      List<Item> items,
      Phrase phrase,
      Length length,
      LocalDate day,
      int count,
      State state,
      Object secret) {
    public boolean crowded() {
      return items.size() > 1;
    }
  }

  record Item(String label) {}

  enum State {
    IN_SERVICE
  }

  @TempDir private Path folder;

  private Documents documents() {
    return new Documents(folder)
        .word("test.greeting", "Dear **{name}**, welcome")
        .word("test.nested", "[{inner}]")
        .word("test.runs.one", "one run")
        .word("test.runs.other", "{count} runs");
  }

  private static View view() {
    return new View(
        "A*b",
        Optional.empty(),
        List.of(new Item("x"), new Item("y|z")),
        Phrase.of("test.greeting", "name", "<Bo>"),
        Length.metres(2),
        LocalDate.of(2026, 3, 14),
        1234567,
        State.IN_SERVICE,
        new Thread());
  }

  private String fill(String template) throws TemplateProblem {
    return documents().fill(template, view());
  }

  private TemplateProblem problem(String template) {
    return assertThrows(TemplateProblem.class, () -> fill(template));
  }

  @Test
  void aRecordIsSeenByItsComponentsAndPublicMethods() throws TemplateProblem {
    assertEquals(
        "x " + Escape.markdown("y|z") + " " + Escape.markdown("IN_SERVICE") + " yes",
        fill(
            "<#list view.items as item>${item.label} </#list>${view.state} ${view.crowded?then('yes', 'no')}"));
  }

  @Test
  void anEmptyOptionalIsAMissingValue() throws TemplateProblem {
    assertEquals("none", fill("${view.remark!'none'}"));
    assertEquals("", fill("<#if view.remark??>some</#if>"));
  }

  @Test
  void aNumberIsNeverGroupedByAccident() throws TemplateProblem {
    Locale before = Locale.getDefault();
    try {
      Locale.setDefault(Locale.GERMANY);
      assertEquals("1234567", fill("${view.count}"));
    } finally {
      Locale.setDefault(before);
    }
  }

  @Test
  void quantitiesAndDatesAreTextForTheReader() throws TemplateProblem {
    assertTrue(fill("${view.length}").matches("[0-9].*[a-z].*"), fill("${view.length}"));
    assertEquals("March 14, 2026", fill("${view.day}"));
  }

  @Test
  void wordsMayHoldMarkdownAndTheirValuesMayNot() throws TemplateProblem {
    assertEquals(
        "Dear **" + Escape.markdown("A*b") + "**, welcome",
        fill("${say('test.greeting', {'name': view.name})}"));
    assertEquals("Dear **" + Escape.markdown("<Bo>") + "**, welcome", fill("${view.phrase}"));
    assertEquals(
        "[Dear **x**, welcome]",
        fill("${say('test.nested', {'inner': say('test.greeting', {'name': 'x'})})}"));
  }

  @Test
  void wordsFollowACount() throws TemplateProblem {
    assertEquals("one run", fill("${say('test.runs', {'count': 1})}"));
    assertEquals("2 runs", fill("${say('test.runs', {'count': 2})}"));
  }

  @Test
  void aMissingValueIsNamedWithItsPlace() {
    TemplateProblem problem = problem("# Fine\n\ntext ${view.nmae}\n");
    assertEquals("test.md", problem.file());
    assertEquals(3, problem.line());
    assertEquals(6, problem.column());
    assertTrue(problem.problem().contains("a View has no 'nmae'"), problem.problem());
    assertTrue(problem.getMessage().startsWith("test.md:3:6: "), problem.getMessage());
  }

  @Test
  void aMissingOptionalIsNamedWithItsPlace() {
    TemplateProblem problem = problem("\n${view.remark}");
    assertEquals(2, problem.line());
    assertTrue(problem.problem().contains("view.remark"), problem.problem());
  }

  @Test
  void missingWordsAreNamedWithTheirPlace() {
    TemplateProblem problem = problem("\n\n${say('test.none')}");
    assertEquals(3, problem.line());
    assertEquals("there are no words for 'test.none'", problem.problem());
    assertEquals(
        "the words 'test.greeting' need a value 'name'",
        problem("${say('test.greeting')}").problem());
  }

  @Test
  void brokenSyntaxIsNamedWithItsPlace() {
    TemplateProblem problem = problem("a\n<#if view.name>\nb");
    assertEquals("test.md", problem.file());
    assertTrue(problem.line() >= 2, problem.getMessage());
  }

  @Test
  void aProblemInAnIncludedFileNamesThatFile() {
    Documents documents = documents().file("parts/head.md", "\n${view.none}");
    TemplateProblem problem =
        assertThrows(
            TemplateProblem.class, () -> documents.fill("<#include 'parts/head.md'>", view()));
    assertEquals("parts/head.md", problem.file());
    assertEquals(2, problem.line());
  }

  @Test
  void aMissingTemplateIsAProblem() {
    Templates templates = Templates.ofDocuments(documents().source(), documents().wording());
    TemplateProblem problem =
        assertThrows(TemplateProblem.class, () -> templates.fill("nowhere.md", Map.of()));
    assertEquals("nowhere.md: there is no such template", problem.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "${'freemarker.template.utility.Execute'?new()('id')}",
        "${view?api.getClass()}",
        "${view.class}",
        "${view.getClass()}",
        "${view.secret}",
        "${view.secret.name}",
        "${view.hashCode}",
        "${view.name.getBytes}",
        "${view.items.getClass}",
        "${view.items?api.size()}",
        "${'1 + 1'?eval}",
        "${'[1]'?eval_json[0]}",
        "<@'x'?interpret />",
        "${view.name?no_esc}",
        "<#noautoesc>${view.name}</#noautoesc>",
        "<#outputformat 'HTML'>${view.name}</#outputformat>",
        "<#ftl output_format='HTML'>${view.name}",
        "<#ftl auto_esc=false>${view.name}",
        "<#setting locale='de'>",
        "<#include '../outside.md'>",
        "<#include '/../outside.md'>",
        "<#include '/etc/passwd'>",
        "<#include 'file:///etc/passwd'>",
        "${view}",
        "${view.items}",
        "${.data_model.say}"
      })
  void aTemplateIsShutIn(String template) {
    assertFalse(problem(template).problem().isBlank());
  }

  @Test
  void aTemplateMayWriteAboutWhatItMayNotUse() throws TemplateProblem {
    assertEquals("What is ?new here", fill("What is ?new here"));
  }

  @Test
  void theWordsOfTheCarriedFilesAreComplete() throws TemplateProblem {
    Map<String, String> words = WordsFiles.read(TemplateSource.carried(), Locale.UK);
    assertEquals("Contents", words.get("theme.contents"));
  }

  @Test
  void aLanguageWithoutWordsIsAProblem() {
    assertThrows(
        TemplateProblem.class, () -> WordsFiles.read(TemplateSource.carried(), Locale.KOREA));
  }
}
