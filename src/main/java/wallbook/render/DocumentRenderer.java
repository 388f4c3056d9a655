package wallbook.render;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import wallbook.wording.Wording;

/**
 * Makes documents: fills the template with the view model, turns the Markdown to HTML, sets it in
 * the common frame and prints it.
 *
 * <p>Templates, stylesheet, measures and fonts are read once, so one renderer should make all
 * documents of a package; it may be used by several threads. The same request gives the same bytes.
 *
 * <p>A template sees {@code view} (the model), {@code facts} (the {@link DocumentFacts}), and the
 * functions {@code say}, {@code anchor} and {@code figure}. The frame, {@code theme/frame.html},
 * sees {@code facts}, {@code head} (the {@link DocumentHead}), {@code contents} (the headings to
 * list) and, where there are any, {@code maker}, {@code logo} and {@code logoWidth}.
 */
public final class DocumentRenderer {
  private static final String FRAME = "theme/frame.html";

  private final Templates templates;
  private final HouseStyle style;
  private final Theme theme;
  private final FigureRenderer figureRenderer;
  private final PdfPrinter printer = new PdfPrinter();

  /**
   * @param source where templates come from
   * @param wording words and units of the reader
   * @param figureRenderer draws what templates give to {@code figure}
   * @throws TemplateProblem if the theme is broken
   */
  public DocumentRenderer(TemplateSource source, Wording wording, FigureRenderer figureRenderer)
      throws TemplateProblem {
    this(source, wording, figureRenderer, HouseStyle.NONE);
  }

  /**
   * @param source where templates come from
   * @param wording words and units of the reader
   * @param figureRenderer draws what templates give to {@code figure}
   * @param style the look of one house of integrators
   * @throws TemplateProblem if the theme is broken
   */
  public DocumentRenderer(
      TemplateSource source, Wording wording, FigureRenderer figureRenderer, HouseStyle style)
      throws TemplateProblem {
    this.templates = Templates.ofDocuments(source, wording);
    this.style = style;
    this.theme = new Theme(source, templates, wording, style);
    this.figureRenderer = figureRenderer;
  }

  /**
   * Makes one document.
   *
   * @throws TemplateProblem if a template can't be filled or what it gives can't be printed
   */
  public RenderedDocument render(DocumentRequest request) throws TemplateProblem {
    return printer.print(
        request.fileName(), () -> copy(request), theme, request.facts(), request.attachments());
  }

  /**
   * The page that a document is printed from, with its pictures in it and without a stylesheet.
   *
   * @throws TemplateProblem if a template can't be filled or a drawing holds what acts or loads
   *     from elsewhere
   */
  public String html(DocumentRequest request) throws TemplateProblem {
    PdfPrinter.Copy copy = copy(request);
    for (Map.Entry<Element, Figure> picture : copy.figures().entrySet()) {
      Page.show(request.template(), picture.getKey(), picture.getValue());
    }
    return copy.page().outerHtml();
  }

  private PdfPrinter.Copy copy(DocumentRequest request) throws TemplateProblem {
    Figures figures = new Figures(figureRenderer);
    Markdown.Page markdown = Markdown.toHtml(filled(request, figures));
    DocumentHead head = DocumentHead.of(request.template(), markdown.head(), request.facts());
    Page body = new Page(request.template(), markdown.html());
    body.place(figures.drawn());
    List<Heading> headings = body.headings();
    Document page = body.in(FRAME, frame(request.facts(), head, headings));
    return new PdfPrinter.Copy(
        request.template(),
        page,
        theme.stylesheet(head, request.facts()),
        body.pictures(),
        headings);
  }

  private String filled(DocumentRequest request, Figures figures) throws TemplateProblem {
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("view", request.model());
    values.put("facts", request.facts());
    values.put("figure", figures);
    return templates.fill(request.template(), values);
  }

  private String frame(DocumentFacts facts, DocumentHead head, List<Heading> headings)
      throws TemplateProblem {
    List<Heading> listed =
        headings.stream().filter(heading -> heading.level() <= head.contents()).toList();
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("facts", facts);
    values.put("head", head);
    values.put("contents", listed);
    style.maker().ifPresent(maker -> values.put("maker", maker));
    style.logoAddress().ifPresent(address -> values.put("logo", address));
    style.logoWidth().ifPresent(width -> values.put("logoWidth", width));
    return Escape.htmlStoodFor(templates.fill(FRAME, values));
  }
}
