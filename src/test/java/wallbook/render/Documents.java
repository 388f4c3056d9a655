package wallbook.render;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import wallbook.wording.UnitSystem;
import wallbook.wording.Wording;

/** Makes documents of templates written in a test. */
public final class Documents {
  /** Facts of a document that are as good as any. */
  public static final DocumentFacts FACTS =
      new DocumentFacts(
          "Test house",
          "Test document",
          "en-US",
          "3",
          LocalDate.of(2026, 3, 14),
          PaperSize.LETTER,
          "0.1.0",
          true);

  /** The same facts on a paper. */
  public static DocumentFacts onPaper(PaperSize paper) {
    return new DocumentFacts(
        FACTS.jobTitle(),
        FACTS.documentTitle(),
        FACTS.language(),
        FACTS.revision(),
        FACTS.issued(),
        paper,
        FACTS.generatorVersion(),
        FACTS.invented());
  }

  private final Path folder;
  private final Map<String, String> words = new LinkedHashMap<>();
  private FigureRenderer figures = FigureRenderer.NONE;

  /**
   * @param folder an empty folder for the test's templates
   */
  public Documents(Path folder) {
    this.folder = folder;
  }

  public Documents with(FigureRenderer renderer) {
    figures = renderer;
    return this;
  }

  public Documents word(String key, String text) {
    words.put(key, text);
    return this;
  }

  /** Puts a file into the user's templates folder. */
  public Documents file(String path, String text) {
    try {
      Files.createDirectories(folder.resolve(path).getParent());
      Files.writeString(folder.resolve(path), text);
      return this;
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  public Wording wording() {
    try {
      Map<String, String> all = new LinkedHashMap<>(WordsFiles.read(source(), Locale.US));
      all.putAll(words);
      return new Wording(Locale.US, all, UnitSystem.values()[0]);
    } catch (TemplateProblem e) {
      throw new IllegalStateException(e);
    }
  }

  public TemplateSource source() {
    try {
      return TemplateSource.overriddenBy(folder);
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }

  /** Only fills a template with a model. */
  public String fill(String template, Object model) throws TemplateProblem {
    file("test.md", template);
    return Templates.ofDocuments(source(), wording())
        .fill("test.md", Map.of("view", model, "figure", new Figures(figures)));
  }

  /** Makes a whole document. */
  public RenderedDocument render(String template, Object model, Attachment... attachments)
      throws TemplateProblem {
    return render(template, model, FACTS, attachments);
  }

  /** Makes the page of a document only. */
  String html(String template, Object model) throws TemplateProblem {
    file("test.md", template);
    return new DocumentRenderer(source(), wording(), figures)
        .html(new DocumentRequest("test.pdf", "test.md", model, FACTS, List.of()));
  }

  public RenderedDocument render(
      String template, Object model, DocumentFacts facts, Attachment... attachments)
      throws TemplateProblem {
    file("test.md", template);
    return new DocumentRenderer(source(), wording(), figures)
        .render(new DocumentRequest("test.pdf", "test.md", model, facts, List.of(attachments)));
  }
}
