package wallbook.fuzz;

import java.util.List;
import java.util.Map;
import java.util.regex.Pattern;

/**
 * A tree of maps, lists and texts in the flow style of YAML 1.1, each leaf a text. The YAML library
 * writes the same, but took a third of a fuzz run for it.
 */
final class FlowYaml {
  /** Texts that mean the same without quotes; other ones are quoted. */
  private static final Pattern PLAIN = Pattern.compile("[A-Za-z0-9][A-Za-z0-9 .°/-]*(?<! )|~");

  private FlowYaml() {}

  static String of(Object tree) {
    StringBuilder out = new StringBuilder(1 << 15);
    write(tree, out);
    return out.append('\n').toString();
  }

  private static void write(Object node, StringBuilder out) {
    if (node instanceof Map<?, ?> map) {
      String before = "{";
      for (Map.Entry<?, ?> entry : map.entrySet()) {
        out.append(before);
        write(entry.getKey(), out);
        out.append(": ");
        write(entry.getValue(), out);
        before = ", ";
      }
      out.append(map.isEmpty() ? "{}" : "}");
    } else if (node instanceof List<?> list) {
      String before = "[";
      for (Object item : list) {
        out.append(before);
        write(item, out);
        before = ", ";
      }
      out.append(list.isEmpty() ? "[]" : "]");
    } else {
      scalar(node.toString(), out);
    }
  }

  private static void scalar(String text, StringBuilder out) {
    if (PLAIN.matcher(text).matches()) {
      out.append(text);
      return;
    }
    out.append('"');
    text.chars().forEach(c -> quoted((char) c, out));
    out.append('"');
  }

  private static void quoted(char c, StringBuilder out) {
    if (c == '"' || c == '\\') {
      out.append('\\').append(c);
    } else if (c < ' ' || c > '~') {
      out.append(String.format("\\u%04X", (int) c));
    } else {
      out.append(c);
    }
  }
}
