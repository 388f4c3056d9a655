package wallbook.bench;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import wallbook.compose.Composition;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.render.DocumentRenderer;
import wallbook.render.TemplateProblem;

/**
 * Writes the pages that the documents of a record are printed from, for other printers: {@code
 * RECORD FOLDER}.
 */
public final class WritePages {
  private static final List<String> FACES = List.of("Regular", "Italic", "Bold", "BoldItalic");

  private WritePages() {}

  /**
   * @param args record, folder
   */
  public static void main(String[] args) throws IOException, TemplateProblem {
    Path folder = Path.of(args[1]);
    MeasuredHouse house = MeasuredHouse.of(Path.of(args[0]));
    Composition composition = house.composition();
    DocumentRenderer renderer = house.renderer();
    for (DocumentPlan plan : Documents.all()) {
      Path file = folder.resolve(plan.file().replace('/', '-').replace(".pdf", ".html"));
      Files.createDirectories(file.getParent());
      Files.writeString(file, house.page(renderer, plan, composition));
    }
    for (String face : FACES) {
      String name = "NotoSans-" + face + ".ttf";
      Path file = folder.resolve("fonts").resolve(name);
      Files.createDirectories(file.getParent());
      try (InputStream font = WritePages.class.getResourceAsStream("/wallbook/fonts/" + name)) {
        Files.copy(font, file, StandardCopyOption.REPLACE_EXISTING);
      }
    }
  }
}
