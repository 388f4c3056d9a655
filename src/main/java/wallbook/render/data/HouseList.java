package wallbook.render.data;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.List;
import org.apache.commons.csv.CSVFormat;
import org.jsoup.nodes.Document;
import org.jsoup.nodes.Element;
import wallbook.wording.Wording;

/** What became of many records, as a page to open packages from and as a table for programs. */
public final class HouseList {
  private static final String STYLE =
      "body{font:1rem/1.5 sans-serif;margin:2rem;max-width:70rem}"
          + "table{border-collapse:collapse}caption{text-align:left;padding:.5rem 0}"
          + "th,td{border:1px solid;padding:.3rem .6rem;text-align:left}";

  private final Wording wording;

  public HouseList(Wording wording) {
    this.wording = wording;
  }

  /** A page of plain HTML with a table; it needs nothing but the packages beside it. */
  public String page(List<HouseOutcome> houses) {
    Document page = Document.createShell("");
    page.outputSettings().prettyPrint(true).indentAmount(1);
    page.selectFirst("html").attr("lang", wording.locale().toLanguageTag());
    page.head().appendElement("meta").attr("charset", "utf-8");
    page.head()
        .appendElement("meta")
        .attr("name", "viewport")
        .attr("content", "width=device-width, initial-scale=1");
    page.title(wording.say("houses.title"));
    page.head().appendElement("style").appendText(STYLE);
    Element main = page.body().appendElement("main");
    main.appendElement("h1").text(wording.say("houses.title"));
    Element table = main.appendElement("table");
    table.appendElement("caption").text(wording.say("houses.caption"));
    Element head = table.appendElement("thead").appendElement("tr");
    for (String column : List.of("house", "job", "revision", "record", "errors", "warnings")) {
      head.appendElement("th").attr("scope", "col").text(wording.say("houses." + column));
    }
    Element body = table.appendElement("tbody");
    houses.forEach(house -> row(house, body.appendElement("tr")));
    return "<!doctype html>\n" + page.selectFirst("html").outerHtml() + "\n";
  }

  private void row(HouseOutcome house, Element row) {
    Element first = row.appendElement("th").attr("scope", "row");
    String title = house.title().isEmpty() ? house.record() : house.title();
    if (house.packageName().isPresent()) {
      first.appendElement("a").attr("href", house.packageName().get() + "/").text(title);
    } else {
      first.text(title + " (" + wording.say("houses.none") + ")");
    }
    row.appendElement("td").text(house.job());
    row.appendElement("td").text(house.revision());
    row.appendElement("td").text(house.record());
    row.appendElement("td").text(Integer.toString(house.errors()));
    row.appendElement("td").text(Integer.toString(house.warnings()));
  }

  /** The same as rows with a header (RFC 4180); names of columns are the same in every language. */
  public String table(List<HouseOutcome> houses) {
    StringBuilder text = new StringBuilder();
    try {
      CSVFormat form = CSVFormat.RFC4180;
      form.printRecord(
          text, "record", "job", "revision", "package", "errors", "warnings", "exit_code");
      for (HouseOutcome house : houses) {
        form.printRecord(
            text,
            house.record(),
            house.job(),
            house.revision(),
            house.packageName().orElse(""),
            house.errors(),
            house.warnings(),
            house.exitCode());
      }
    } catch (IOException e) {
      throw new UncheckedIOException("a text in memory can't be written", e);
    }
    return text.toString();
  }
}
