package wallbook.cli;

import java.io.IOException;
import java.io.InputStream;
import java.net.URL;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.jar.Attributes;
import java.util.jar.Manifest;
import picocli.CommandLine;
import wallbook.reference.Source;
import wallbook.reference.Standing;
import wallbook.reference.Table;
import wallbook.reference.Tables;

/** What program this is: version, commit, and the editions of the tables it computes from. */
final class Version implements CommandLine.IVersionProvider {
  private static final String MANIFEST = "META-INF/MANIFEST.MF";

  /** Version without the program's name, from the jar. */
  static String number() {
    return Optional.ofNullable(Main.class.getPackage().getImplementationVersion())
        .orElse("development");
  }

  @Override
  public String[] getVersion() throws IOException {
    List<String> lines = new ArrayList<>();
    lines.add("wallbook " + number() + commit().map(id -> ", commit " + id).orElse(""));
    lines.add("");
    lines.add("Published sources of the tables that it computes from, and how many rest on each:");
    Map<String, Integer> published = new TreeMap<>();
    int custom = 0;
    for (String name : Tables.names()) {
      Table table = new Tables().table(name);
      Source source = table.source();
      if (source.standing() == Standing.COMMON_PRACTICE) {
        custom++;
      } else {
        published.merge(source.citation(), 1, Integer::sum);
      }
    }
    published.forEach((citation, tables) -> lines.add("%4d  %s".formatted(tables, citation)));
    lines.add("");
    lines.add("%4d  more are common practice; no source says so".formatted(custom));
    return lines.stream().map(line -> line.replace("%", "%%")).toArray(String[]::new);
  }

  /** The commit that the jar was made from; none outside a jar or a history. */
  private static Optional<String> commit() throws IOException {
    URL place = Main.class.getProtectionDomain().getCodeSource().getLocation();
    if (!place.getPath().endsWith(".jar")) {
      return Optional.empty();
    }
    try (InputStream in = Main.class.getClassLoader().getResourceAsStream(MANIFEST)) {
      Attributes entries = new Manifest(in).getMainAttributes();
      return Optional.ofNullable(entries.getValue("Source-Commit"))
          .filter(id -> id.matches("[0-9a-f]+"));
    }
  }
}
