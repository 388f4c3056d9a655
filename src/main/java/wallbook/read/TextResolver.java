package wallbook.read;

import org.yaml.snakeyaml.nodes.NodeId;
import org.yaml.snakeyaml.nodes.Tag;
import org.yaml.snakeyaml.resolver.Resolver;

/**
 * Takes every value without a tag for text, but for the ways to say nothing. What a text means
 * follows from the key that it stands under, never from its looks.
 */
final class TextResolver extends Resolver {
  @Override
  protected void addImplicitResolvers() {
    // None: the patterns of the library's own are tried on every value and serve nothing here.
  }

  @Override
  public Tag resolve(NodeId kind, String value, boolean implicit) {
    if (kind != NodeId.scalar || !implicit) {
      return super.resolve(kind, value, implicit);
    }
    return switch (value) {
      case "", "~", "null", "Null", "NULL" -> Tag.NULL;
      case "<<" -> Tag.MERGE;
      default -> Tag.STR;
    };
  }
}
