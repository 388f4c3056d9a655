package wallbook.render.drawing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import wallbook.AllWords;

/**
 * The words at the head of a column fit it in every language. The engine breaks no word, so one
 * that is too long would run into its neighbour.
 */
class ColumnHeadsTest {
  private static final Pattern TABLE =
      Pattern.compile("<@block.compact columns=\"([0-9 ]+)\">\\n+(\\|[^\\n]*)");
  private static final Pattern SAID = Pattern.compile("say\\(\"([^\"]+)\"");

  // The narrower paper, A4 (ISO 216), without the margins of the theme; compact-size; the space of
  // .compact th in the stylesheet on both sides.
  private static final double UPRIGHT_MM = 210 - 2 * 15;
  private static final double LYING_MM = 297 - 2 * 15;
  private static final Item.Type HEAD = new Item.Type(7.5, true);
  private static final double SPACE_MM = 2 * 1.1;

  @Test
  void everyWordAtTheHeadOfAColumnFitsIt() throws IOException {
    List<String> tooWide = new ArrayList<>();
    int tables = 0;
    try (Stream<Path> templates = Files.list(Path.of("templates"))) {
      for (Path template : templates.filter(t -> t.toString().endsWith(".md")).toList()) {
        String text = Files.readString(template);
        Matcher table = TABLE.matcher(text);
        while (table.find()) {
          tables++;
          String before = text.substring(0, table.start());
          boolean lies = before.lastIndexOf("<@block.wide>") > before.lastIndexOf("</@block.wide>");
          String where = template.getFileName() + ", columns " + table.group(1);
          String[] shares = table.group(1).split(" ");
          String[] heads = table.group(2).substring(1).split("\\|");
          for (int i = 0; i < Math.min(shares.length, heads.length); i++) {
            double width = Integer.parseInt(shares[i]) / 100.0 * (lies ? LYING_MM : UPRIGHT_MM);
            Matcher said = SAID.matcher(heads[i]);
            if (said.find()) {
              for (Map<String, String> words : List.of(AllWords.ENGLISH, AllWords.SPANISH)) {
                check(where, words.get(said.group(1)), width - SPACE_MM, tooWide);
              }
            }
          }
        }
      }
    }
    assertTrue(tables > 20, "the scan finds nothing any more");
    assertEquals(List.of(), tooWide);
  }

  private static void check(String where, String head, double roomMm, List<String> tooWide) {
    for (String word : head.split(" ")) {
      double width = TextMeasure.widthMm(word, HEAD);
      if (width > roomMm) {
        tooWide.add("%s: %s is %.1f mm wide in %.1f".formatted(where, word, width, roomMm));
      }
    }
  }
}
