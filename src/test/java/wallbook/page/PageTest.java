package wallbook.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonFactory;
import com.fasterxml.jackson.core.JsonParser;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallbook.Jobs;
import wallbook.compose.disclosure.Recipient;
import wallbook.record.Job;
import wallbook.record.Photo;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.render.PageRenderer;
import wallbook.render.TemplateProblem;
import wallbook.render.TemplateSource;

/** The text of the page: that it is whole, leads nowhere else, and holds nothing but text. */
class PageTest {
  private static final int LARGEST_BYTES = 2_000_000;

  private static Document page(String sample, Recipient recipient) {
    return Jsoup.parse(SamplePage.html(sample, recipient));
  }

  @Test
  void aLargeHouseFitsAPhone() {
    int size = SamplePage.html("lakeside", Recipient.PAGE).getBytes(StandardCharsets.UTF_8).length;
    assertTrue(size < LARGEST_BYTES, size + " bytes");
  }

  @Test
  void photographsStandWithTheirRoomAndRackAndSayWhatTheyShow() {
    Job job = Jobs.sample("lakeside");
    Document page = page("lakeside", Recipient.OWNER);

    assertEquals(
        job.photos().stream().map(Photo::caption).collect(Collectors.toSet()),
        Set.copyOf(page.select("figure.photo img").eachAttr("alt")));
    assertEquals(1, page.select("[id=head/rack] figure.photo").size());
    assertTrue(
        page.select("figure.photo img").eachAttr("src").stream()
            .allMatch(src -> src.startsWith("data:image/")));
  }

  @Test
  void theSamePageIsMadeTwiceAlike() {
    Job job = Jobs.sample("flat");
    assertEquals(
        SamplePage.html(
            job, SamplePage.view(job, Recipient.PAGE, SamplePage.ENGLISH), SamplePage.ENGLISH),
        SamplePage.html("flat", Recipient.PAGE));
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void everyLinkLeadsToAPartOfThePage(String sample) {
    Document page = page(sample, Recipient.OWNER);
    Set<String> ids = new HashSet<>(page.select("[id]").eachAttr("id"));
    assertEquals(page.select("[id]").size(), ids.size(), "two parts have one name");
    List<String> lost = new ArrayList<>();
    for (String href : page.select("a[href]").eachAttr("href")) {
      boolean within = !href.startsWith("tel:") && !href.startsWith("data:application/yaml;");
      if (within && !ids.contains(href.substring(1))) {
        lost.add(href);
      }
    }
    assertEquals(List.of(), lost);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void nothingComesFromElsewhere(String sample) {
    Document page = page(sample, Recipient.OWNER);
    assertEquals(
        List.of(),
        page.select("[src], object, iframe, form[action], base").eachAttr("src").stream()
            .filter(src -> !src.matches("data:image/(jpeg|png);base64,[A-Za-z0-9+/]+=*"))
            .map(src -> src.substring(0, Math.min(60, src.length())))
            .toList());
    assertEquals(List.of("data:,"), page.select("link").eachAttr("href"));
    String style = page.select("style").first().data();
    assertFalse(style.contains("url(") || style.contains("@import"), style);
    String policy = page.select("meta[http-equiv=Content-Security-Policy]").attr("content");
    assertTrue(policy.startsWith("default-src 'none'; script-src 'sha256-"), policy);
    assertFalse(policy.contains("unsafe"), policy);
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void everyCableOfTheRecordIsThereWithBothItsEnds(String sample) {
    Job job = Jobs.sample(sample);
    Document page = page(sample, Recipient.OWNER);
    for (Run run : job.runs()) {
      Element card = page.getElementById("run/" + run.label());
      assertTrue(card != null, run.label() + " has no card");
      for (RunEnd end : List.of(run.from(), run.to())) {
        String where =
            end.place()
                .map(id -> job.place(id).name())
                .orElseGet(() -> job.head(end.head().orElseThrow()).name());
        assertTrue(card.select(".ends").text().contains(where), run.label() + " lacks " + where);
      }
      assertFalse(card.select("i").text().isBlank(), run.label() + " has no state in words");
    }
  }

  @Test
  void everySignStandsBesideItsWord() {
    Document page = page("lakeside", Recipient.OWNER);
    assertTrue(page.select("i").stream().noneMatch(chip -> chip.text().isBlank()));
  }

  @Test
  void everyPlaceOnAPlanCanBeTouched() {
    Document page = page("lakeside", Recipient.OWNER);
    Element kitchen = page.getElementById("room/kitchen");
    List<String> touched =
        kitchen.select("figure").first().select("a[href^=#place/]").eachAttr("href");
    Set<String> listed = new HashSet<>();
    kitchen.select("section[id^=place/]").forEach(s -> listed.add("#" + s.id()));
    assertEquals(listed, new HashSet<>(touched));
  }

  @Test
  void whoIsAboutToDrillIsToldBeforeTheWallsWhatTheyDoNotShow() {
    String kept = "not in this copy";
    Element usual = page("lakeside", Recipient.PAGE).getElementById("room/kitchen");
    Element owners = page("lakeside", Recipient.OWNER).getElementById("room/kitchen");
    assertTrue(usual.select("details.walls > p").text().contains(kept));
    assertFalse(owners.select("details.walls > p").text().contains(kept));
    assertTrue(owners.select("details.walls > p").text().contains("is not recorded"));
    assertEquals(
        "a", usual.select("a[href=#caution/drilling], details.walls").first().normalName());
  }

  @Test
  void aPlaceWithAPositionLeadsToItsMarkAndOneWithoutDoesNot() {
    Job job =
        Jobs.job(
            """
            floors:
              - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
            spaces:
              - id: den
                name: Den
                floor: ground
                kind: living
                outline: [[0 ft, 0 ft], [10 ft, 0 ft], [10 ft, 8 ft], [0 ft, 8 ft]]
            places:
              - {id: plate, name: Plate, space: den, kind: wall_plate, use: data, wall: A, offset: 3 ft, height: 16 in}
              - {id: box, name: Box, space: den, kind: wall_plate, use: data}
            """);
    Document page =
        Jsoup.parse(
            SamplePage.html(
                job, SamplePage.view(job, Recipient.PAGE, SamplePage.ENGLISH), SamplePage.ENGLISH));
    assertEquals(List.of("#plan/place/plate"), page.select(".place .lead a").eachAttr("href"));
    assertEquals("a", page.getElementById("plan/place/plate").normalName());
  }

  @ParameterizedTest
  @ValueSource(strings = {"lakeside", "flat"})
  void theSpanishPageIsSpanish(String sample) {
    Job job = Jobs.sample(sample);
    Document page =
        Jsoup.parse(
            SamplePage.html(
                job, SamplePage.view(job, Recipient.PAGE, SamplePage.SPANISH), SamplePage.SPANISH));
    assertEquals("es-US", page.select("html").attr("lang"));
    assertTrue(page.getElementById("cautions").text().startsWith("Antes de perforar"));
  }

  @Test
  void hostileTextStaysText() throws IOException {
    Document page = Jsoup.parse(HostileJob.html());
    assertEquals(2, page.select("script").size());
    assertEquals(1, page.select("style").size());
    assertEquals(0, page.select("img, iframe, object, [onerror]").size());
    assertEquals(HostileJob.TEXT, page.title());
    assertEquals(HostileJob.TEXT, page.select("article .label").first().text());
    Set<String> found = new HashSet<>();
    try (JsonParser json =
        new JsonFactory()
            .createParser(page.select("script[type=application/json]").first().data())) {
      while (json.nextToken() != null) {
        if (json.currentToken().isScalarValue()) {
          found.add(json.getText());
        }
      }
    }
    assertTrue(found.contains(HostileJob.TEXT), "the search has the label as it stands");
  }

  @ParameterizedTest
  @ValueSource(strings = {"page/page.js", "page/page.css"})
  void aFileThatWouldEndItsElementIsRefused(String file, @TempDir Path folder) throws IOException {
    Files.createDirectories(folder.resolve("page"));
    String ending = file.endsWith("js") ? "// </SCRIPT>" : "/* </Style */";
    Files.writeString(folder.resolve(file), ending);
    TemplateSource source = TemplateSource.overriddenBy(folder);
    TemplateProblem problem =
        assertThrows(
            TemplateProblem.class,
            () ->
                new PageRenderer(source, SamplePage.ENGLISH)
                    .render(
                        SamplePage.view("flat", Recipient.PAGE),
                        SamplePage.facts(Jobs.sample("flat"), SamplePage.ENGLISH),
                        new byte[0]));
    assertEquals(file, problem.file());
  }

  @Test
  void aHouseWithNextToNothingHasAPage() {
    Job job =
        Jobs.job(
            """
            floors:
              - {id: ground, name: Ground floor, level: 0, elevation: 0 ft}
            spaces:
              - {id: den, name: Den, floor: ground, kind: living}
            """);
    String html =
        SamplePage.html(
            job, SamplePage.view(job, Recipient.PAGE, SamplePage.ENGLISH), SamplePage.ENGLISH);
    assertTrue(Jsoup.parse(html).getElementById("room/den") != null);
  }
}
