package wallbook.render;

import freemarker.template.TemplateMethodModelEx;
import freemarker.template.TemplateModelException;
import java.nio.charset.StandardCharsets;
import java.util.Base64;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import org.jsoup.nodes.Element;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.figure.Photograph;
import wallbook.compose.page.PageView;
import wallbook.picture.Picture;
import wallbook.render.drawing.DrawingSvg;
import wallbook.wording.Wording;

/**
 * Makes the offline page: one file of HTML with its stylesheet, script and drawings inside, which
 * opens from a disk and asks the network for nothing. The page itself forbids its browser to run or
 * load anything else. The same view gives the same text.
 *
 * <p>The template {@code page/index.html.ftl} sees {@code view} (the {@link PageView}), {@code
 * facts} (the {@link DocumentFacts}), the functions {@code say}, {@code photo(photograph)} and
 * {@code plan(drawing)}, and the ready pieces {@code policy}, {@code style}, {@code script} and
 * {@code data}. Stylesheet and script are {@code page/page.css} and {@code page/page.js}, put in as
 * they stand. {@code recordData} is the record as an address that holds it, {@code recordDigest}
 * its SHA-256 and {@code seal} what the head of the page must hold to be sealed by {@link
 * PageSeal}.
 */
public final class PageRenderer {
  private static final String TEMPLATE = "page/index.html.ftl";
  private static final String STYLE = "page/page.css";
  private static final String SCRIPT = "page/page.js";

  private final TemplateSource source;
  private final Templates templates;
  private final DrawingSvg drawings = new DrawingSvg();

  /**
   * @param source where templates come from
   * @param wording words of the reader
   */
  public PageRenderer(TemplateSource source, Wording wording) {
    this.source = source;
    this.templates = Templates.ofPages(source, wording);
  }

  /**
   * Makes the page, in UTF-8.
   *
   * @param record the job record, or the extract of it, that the page's reader may have
   * @throws TemplateProblem if the template can't be filled, or stylesheet or script can't stand
   *     inside a page
   */
  public byte[] render(PageView view, DocumentFacts facts, byte[] record) throws TemplateProblem {
    String style = inner(STYLE, "style");
    String script = inner(SCRIPT, "script");
    String policy =
        "default-src 'none'; script-src '%s'; style-src '%s'; img-src data:; base-uri 'none'; form-action 'none'"
            .formatted(digest(script), digest(style));
    Map<String, Object> values = new LinkedHashMap<>();
    values.put("view", view);
    values.put("facts", facts);
    values.put("photo", (TemplateMethodModelEx) this::photo);
    values.put("plan", (TemplateMethodModelEx) this::plan);
    values.put("recordData", PageSeal.RECORD_ADDRESS + Base64.getEncoder().encodeToString(record));
    values.put("recordDigest", HexFormat.of().formatHex(PageSeal.sha256(record)));
    values.put("seal", PageSeal.BLANK);
    values.put("policy", MarkupFormat.HTML.ready(policy));
    values.put("style", MarkupFormat.HTML.ready("<style>" + style + "</style>"));
    values.put("script", MarkupFormat.HTML.ready("<script>" + script + "</script>"));
    values.put(
        "data",
        MarkupFormat.HTML.ready(
            "<script type=\"application/json\" id=\"entries\">"
                + EntriesJson.of(view.entries())
                + "</script>"));
    byte[] page = templates.filled(TEMPLATE, values);
    PageSeal.seal(page);
    return page;
  }

  /** A file that stands between two tags, where nothing but its end tag ends it. */
  private String inner(String path, String tag) throws TemplateProblem {
    String text = source.read(path);
    String lower = text.toLowerCase(Locale.ROOT);
    for (String ending : List.of("</" + tag, "<!--")) {
      if (lower.contains(ending)) {
        throw new TemplateProblem(path, "'" + ending + "' can't stand in a file put into a page");
      }
    }
    return text;
  }

  /** The digest by which a content security policy allows one script or style and no other. */
  private static String digest(String text) {
    byte[] hash = PageSeal.sha256(text.getBytes(StandardCharsets.UTF_8));
    return "sha256-" + Base64.getEncoder().encodeToString(hash);
  }

  /** A photograph; its address holds it (RFC 2397). */
  @SuppressWarnings("rawtypes") // the engine's interface has a raw list
  private Object photo(List arguments) throws TemplateModelException {
    if (arguments.size() != 1
        || !(arguments.get(0) instanceof ViewValues.Holder holder)
        || !(holder.held() instanceof Photograph photograph)) {
      throw new TemplateModelException("photo takes one photograph of the view model");
    }
    Picture picture = photograph.picture();
    byte[] file = picture.file();
    String address =
        "data:"
            + Figure.Photograph.mediaTypeOf(file)
            + ";base64,"
            + Base64.getEncoder().encodeToString(file);
    Element image =
        new Element("img")
            .attr("src", address)
            .attr("width", Integer.toString(picture.widthPx()))
            .attr("height", Integer.toString(picture.heightPx()))
            .attr("loading", "lazy")
            .attr("alt", photograph.alternative());
    return MarkupFormat.HTML.ready(image.outerHtml());
  }

  @SuppressWarnings("rawtypes") // the engine's interface has a raw list
  private Object plan(List arguments) throws TemplateModelException {
    if (arguments.size() != 1
        || !(arguments.get(0) instanceof ViewValues.Holder holder)
        || !(holder.held() instanceof Drawing drawing)) {
      throw new TemplateModelException("plan takes one drawing of the view model");
    }
    return MarkupFormat.HTML.ready(drawings.touchable(drawing));
  }
}
