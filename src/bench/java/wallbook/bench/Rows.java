package wallbook.bench;

import java.util.List;
import org.jsoup.Jsoup;
import org.jsoup.nodes.Element;

/**
 * The rows of all tables of a document, as bare text.
 *
 * @param rows text of the cells, row by row
 */
record Rows(List<List<String>> rows) {
  /** The rows of a page of HTML. */
  static Rows of(String html) {
    return new Rows(
        Jsoup.parse(html).select("tr").stream()
            .map(row -> row.children().stream().map(Element::text).toList())
            .toList());
  }
}
