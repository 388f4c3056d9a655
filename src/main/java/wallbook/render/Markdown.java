package wallbook.render;

import com.vladsch.flexmark.ast.AnchorRefTarget;
import com.vladsch.flexmark.ast.Code;
import com.vladsch.flexmark.ast.FencedCodeBlock;
import com.vladsch.flexmark.ext.attributes.AttributesExtension;
import com.vladsch.flexmark.ext.tables.TablesExtension;
import com.vladsch.flexmark.ext.yaml.front.matter.AbstractYamlFrontMatterVisitor;
import com.vladsch.flexmark.ext.yaml.front.matter.YamlFrontMatterExtension;
import com.vladsch.flexmark.html.HtmlRenderer;
import com.vladsch.flexmark.html.renderer.HeaderIdGeneratorFactory;
import com.vladsch.flexmark.html.renderer.HtmlIdGenerator;
import com.vladsch.flexmark.html.renderer.LinkResolverContext;
import com.vladsch.flexmark.html.renderer.NodeRenderer;
import com.vladsch.flexmark.html.renderer.NodeRenderingHandler;
import com.vladsch.flexmark.parser.Parser;
import com.vladsch.flexmark.util.ast.Document;
import com.vladsch.flexmark.util.ast.Node;
import com.vladsch.flexmark.util.data.DataHolder;
import com.vladsch.flexmark.util.data.MutableDataSet;
import com.vladsch.flexmark.util.sequence.Escaping;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Markdown with tables, attributes in braces, raw HTML and a head of {@code key: value} lines, to
 * HTML.
 *
 * <p>A heading has an anchor only if the template names one ({@code {#name}}); {@link Page} gives
 * the others theirs.
 *
 * <p>Four spaces at the start of a line are no code block here: templates are indented for their
 * readers. Inside code marks a filled-in value prints as itself, as it does everywhere.
 */
final class Markdown {
  private static final DataHolder OPTIONS =
      new MutableDataSet()
          .set(
              Parser.EXTENSIONS,
              List.of(
                  TablesExtension.create(),
                  AttributesExtension.create(),
                  YamlFrontMatterExtension.create()))
          .set(Parser.INDENTED_CODE_BLOCK_PARSER, false)
          .set(TablesExtension.COLUMN_SPANS, false)
          .set(TablesExtension.APPEND_MISSING_COLUMNS, true)
          .set(TablesExtension.DISCARD_EXTRA_COLUMNS, false)
          .set(HtmlRenderer.RENDER_HEADER_ID, true)
          .toImmutable();

  private static final Parser PARSER = Parser.builder(OPTIONS).build();
  private static final HtmlRenderer RENDERER =
      HtmlRenderer.builder(OPTIONS)
          .htmlIdGeneratorFactory(new GivenAnchors())
          .nodeRendererFactory(options -> new LiteralCode())
          .build();

  private Markdown() {}

  /**
   * @param head values of the head by key, as plain text
   * @param html the rest, a fragment of HTML
   */
  record Page(Map<String, String> head, String html) {}

  static Page toHtml(String markdown) {
    Node document = PARSER.parse(markdown.stripLeading());
    AbstractYamlFrontMatterVisitor visitor = new AbstractYamlFrontMatterVisitor();
    visitor.visit(document);
    Map<String, String> head = new LinkedHashMap<>();
    visitor.getData().forEach((key, values) -> head.put(key, plain(String.join(" ", values))));
    return new Page(head, Escape.htmlStoodFor(RENDERER.render(document)));
  }

  private static String plain(String value) {
    String text = value.strip();
    boolean quoted = text.length() > 1 && text.matches("(?s)\".*\"|'.*'");
    String inner = quoted ? text.substring(1, text.length() - 1) : text;
    return Escape.stoodFor(Escaping.unescapeHtml(inner)).strip();
  }

  /** The anchors that the template names, and no others. */
  private static final class GivenAnchors implements HtmlIdGenerator, HeaderIdGeneratorFactory {
    @Override
    public HtmlIdGenerator create(LinkResolverContext context) {
      return this;
    }

    @Override
    public HtmlIdGenerator create() {
      return this;
    }

    @Override
    public String getId(CharSequence text) {
      return null;
    }

    @Override
    public void generateIds(Document document) {}

    @Override
    public String getId(Node node) {
      return node instanceof AnchorRefTarget target ? target.getAnchorRefId() : null;
    }
  }

  /** Code whose character references, put there for filled-in values, are read. */
  private static final class LiteralCode implements NodeRenderer {
    @Override
    public Set<NodeRenderingHandler<?>> getNodeRenderingHandlers() {
      return Set.of(
          new NodeRenderingHandler<>(
              Code.class,
              (node, context, html) -> {
                html.attr("class", "literal").withAttr().tag("code");
                html.text(Escaping.unescapeHtml(node.getText()));
                html.tag("/code");
              }),
          new NodeRenderingHandler<>(
              FencedCodeBlock.class,
              (node, context, html) -> {
                html.line().tag("pre").openPre();
                html.text(Escaping.unescapeHtml(node.getContentChars()));
                html.closePre().tag("/pre").line();
              }));
    }
  }
}
