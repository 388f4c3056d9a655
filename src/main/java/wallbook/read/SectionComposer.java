package wallbook.read;

import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.composer.Composer;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.nodes.ScalarNode;
import org.yaml.snakeyaml.parser.Parser;

/** Makes nodes, and tells each value of the outermost mapping as soon as it is complete. */
final class SectionComposer extends Composer {

  /** Takes a value of the outermost mapping with its key; one that is no text is given as empty. */
  interface Listener {
    void section(String key, Node value);
  }

  private final Listener listener;
  private int depth;
  private String key = "";

  SectionComposer(Parser parser, LoaderOptions options, Listener listener) {
    super(parser, new TextResolver(), options);
    this.listener = listener;
  }

  @Override
  protected Node composeMappingNode(String anchor) {
    depth++;
    Node node = super.composeMappingNode(anchor);
    depth--;
    return node;
  }

  @Override
  protected Node composeSequenceNode(String anchor) {
    depth++;
    Node node = super.composeSequenceNode(anchor);
    depth--;
    return node;
  }

  @Override
  protected Node composeKeyNode(MappingNode mapping) {
    Node node = super.composeKeyNode(mapping);
    if (depth == 1) {
      key = node instanceof ScalarNode scalar ? scalar.getValue() : "";
    }
    return node;
  }

  @Override
  protected Node composeValueNode(MappingNode mapping) {
    Node node = super.composeValueNode(mapping);
    if (depth == 1) {
      listener.section(key, node);
    }
    return node;
  }
}
