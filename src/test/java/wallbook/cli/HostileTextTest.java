package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.pdmodel.PDPage;
import org.apache.pdfbox.pdmodel.interactive.action.PDActionGoTo;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotation;
import org.apache.pdfbox.pdmodel.interactive.annotation.PDAnnotationLink;
import org.jsoup.Jsoup;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.io.TempDir;
import wallbook.Jobs;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Quantity;
import wallbook.read.RecordWriter;
import wallbook.record.JobRecord;
import wallbook.record.Origin;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.render.TaggedText;

/**
 * A record whose every free text is written in the language of a template, of Markdown, of HTML:
 * each comes out in the documents as the text it is.
 */
@TestInstance(Lifecycle.PER_CLASS)
class HostileTextTest {
  /** What would do something if it were not text. The sign ¶ stands for a mark of its own. */
  private static final List<String> HOSTILE =
      List.of(
          "¶<script>alert(1)</script>",
          "# ¶**b**__c__",
          "¶[e](http://e.example/x)",
          "¶${7*7}<#stop>",
          "![¶](http://f.example/g.png)",
          "| ¶|h|",
          "¶`code`\\|&amp;&#65;",
          "<a href=\"javascript:1\">¶</a>",
          "¶{#id .class}",
          "<!-- ¶ --> ]]>",
          "> ¶http://m.example/n",
          "- ¶~~p~~",
          "¶{count} {length} {name}",
          "---¶",
          "1. ¶<br/><#include 'x'>",
          "<![CDATA[¶]]>");

  /** Free texts that the program looks something up by, or reads as what they are. */
  private static final Set<String> MEANT =
      Set.of(
          "language",
          "wall",
          "trade_size",
          "file",
          "sweep",
          "wire_map",
          "shorts",
          "split_pairs",
          "pair",
          "jack",
          "panel",
          "pull_box");

  private final Map<String, String> written = new TreeMap<>();
  private final Map<String, String> texts = new TreeMap<>();
  private Path folder;

  @BeforeAll
  void build(@TempDir Path place) throws IOException {
    JobRecord record = (JobRecord) hostile(Jobs.sample("flat").record());
    Path file = place.resolve("job.yaml");
    Files.writeString(file, RecordWriter.text(record));
    StringWriter said = new StringWriter();
    PrintWriter printed = new PrintWriter(said, true);
    String into = place.resolve("out").toString();
    int code =
        Main.run(
            printed,
            printed,
            false,
            "build",
            file.toString(),
            "--into",
            into,
            "--allow-warnings",
            "--label-sheets",
            wideSheets(place).toString(),
            "--label-sheet",
            "wide-ports");
    assertEquals(ExitCode.CLEAN, code, said::toString);
    folder = place.resolve("out").resolve("flat-r1");
    for (Path pdf : files(".pdf")) {
      try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
        texts.put(pdf.getFileName().toString(), closed(TaggedText.of(document)));
      }
    }
  }

  /** Ports far enough apart for labels that no one would give a cable. */
  private static Path wideSheets(Path place) throws IOException {
    String table = "/wallbook/reference/label-sheets.csv";
    try (InputStream in = HostileTextTest.class.getResourceAsStream(table)) {
      List<String> lines = new String(in.readAllBytes(), StandardCharsets.UTF_8).lines().toList();
      List<String> kept =
          lines.stream().filter(l -> l.startsWith("#") || l.startsWith("name,")).toList();
      Path file = place.resolve("sheets.csv");
      Files.writeString(
          file,
          String.join("\n", kept)
              + "\nwide-ports,port_strips,a4,297,210,1,5,15,20,267,36,264,34,0.6,,,,4,no,wide\n");
      return file;
    }
  }

  private Object hostile(Object value) {
    if (value instanceof Optional<?> optional) {
      return optional.map(this::hostile);
    } else if (value instanceof List<?> items) {
      return items.stream().map(this::hostile).toList();
    } else if (value instanceof Record thing
        && !(value instanceof Quantity)
        && !thing.getClass().getSimpleName().equals("Point")) {
      Shape shape = Shape.of(thing.getClass());
      List<Object> values = new ArrayList<>();
      for (Field field : shape.fields()) {
        Object given = field.value(thing);
        values.add(isFreeText(field) ? hostileText(given) : hostile(given));
      }
      return shape.make(new Origin(new SourcePosition("job.yaml", 1, 1), Map.of()), values);
    }
    return value;
  }

  private static boolean isFreeText(Field field) {
    return field.type() == String.class
        && !field.hasIdForm()
        && field.refersTo().isEmpty()
        && !MEANT.contains(field.key());
  }

  private Object hostileText(Object given) {
    if (given instanceof Optional<?> optional) {
      return optional.map(this::hostileText);
    } else if (given instanceof List<?> items) {
      return items.stream().map(this::hostileText).toList();
    }
    String mark = "Q" + (1000 + written.size()) + "Q";
    String text = HOSTILE.get(written.size() % HOSTILE.size()).replace("¶", mark);
    written.put(mark, text);
    return text;
  }

  private static String closed(String text) {
    return text.replaceAll("\\s+", "");
  }

  private List<Path> files(String ending) throws IOException {
    try (Stream<Path> all = Files.walk(folder)) {
      return all.filter(p -> p.toString().endsWith(ending)).sorted().toList();
    }
  }

  @Test
  void everyTextIsPrintedAsItWasWritten() {
    Set<String> broken = new TreeSet<>();
    Set<String> printed = new TreeSet<>();
    Pattern mark = Pattern.compile("Q\\d{4}Q");
    texts.forEach(
        (file, text) -> {
          for (Matcher found = mark.matcher(text); found.find(); ) {
            String whole = closed(written.get(found.group()));
            int start = found.start() - whole.indexOf(found.group());
            if (!text.startsWith(whole, start) && !isShortened(text, start, whole)) {
              broken.add(
                  file
                      + ": "
                      + whole
                      + " is printed as "
                      + text.substring(
                          Math.max(0, start), Math.min(text.length(), start + whole.length() + 9)));
            }
            printed.add(found.group());
          }
        });
    assertEquals(Set.of(), broken);
    assertTrue(printed.size() > written.size() / 2, printed.size() + " of " + written.size());
  }

  /** Whether a label, which has little room, shows where a text goes on. */
  private static boolean isShortened(String text, int start, String whole) {
    int end = text.indexOf('…', Math.max(0, start));
    return start >= 0 && end > start && whole.startsWith(text.substring(start, end));
  }

  @Test
  void noTextBecomesALinkOrAnAction() throws IOException {
    for (Path pdf : files(".pdf")) {
      try (PDDocument document = Loader.loadPDF(pdf.toFile())) {
        var catalog = document.getDocumentCatalog().getCOSObject();
        assertTrue(catalog.getDictionaryObject(COSName.AA) == null, "actions in " + pdf);
        assertTrue(catalog.getDictionaryObject(COSName.OPEN_ACTION) == null, "opens " + pdf);
        for (PDPage page : document.getPages()) {
          for (PDAnnotation annotation : page.getAnnotations()) {
            PDAnnotationLink link = (PDAnnotationLink) annotation;
            assertTrue(
                link.getAction() == null || link.getAction() instanceof PDActionGoTo,
                () -> pdf + ": " + link.getCOSObject());
          }
        }
      }
    }
  }

  @Test
  void noTextBecomesAPartOfAPage() throws IOException {
    for (Path html : files(".html")) {
      var page = Jsoup.parse(html.toFile(), "UTF-8");
      assertEquals(
          0,
          page.select("[href*=.example], [src*=.example], [href^=javascript]").size(),
          html.toString());
      assertTrue(
          page.select("script").stream().noneMatch(s -> s.data().startsWith("alert")),
          html.toString());
    }
  }
}
