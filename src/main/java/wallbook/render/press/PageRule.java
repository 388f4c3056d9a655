package wallbook.render.press;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a stylesheet says of pages.
 *
 * @param name of the pages meant; empty for all
 * @param first whether only the first page is meant
 * @param size width and height in points; empty if nothing is said
 * @param declarations of the page itself
 * @param margins declarations of the boxes in its margins, by name such as {@code top-left}
 */
record PageRule(
    String name,
    boolean first,
    List<Float> size,
    List<Declaration> declarations,
    Map<String, List<Declaration>> margins) {
  PageRule {
    size = List.copyOf(size);
    declarations = List.copyOf(declarations);
    // In the order they are written, which is that of the file.
    margins = Collections.unmodifiableMap(new LinkedHashMap<>(margins));
  }
}
