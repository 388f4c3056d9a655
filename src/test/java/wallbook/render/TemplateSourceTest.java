package wallbook.render;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.net.URL;
import java.net.URLClassLoader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import java.util.zip.Deflater;
import java.util.zip.ZipEntry;
import java.util.zip.ZipOutputStream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class TemplateSourceTest {
  @TempDir private Path place;
  private Path folder;
  private TemplateSource source;

  @BeforeEach
  void makeFolder() throws IOException {
    folder = Files.createDirectory(place.resolve("templates"));
    Files.writeString(place.resolve("outside.md"), "outside");
    source = TemplateSource.overriddenBy(folder);
  }

  @Test
  void theUsersFileReplacesTheCarriedOne() throws Exception {
    assertTrue(source.read("theme/theme.properties").contains("page-margin-side"));
    Files.createDirectory(folder.resolve("theme"));
    Files.writeString(folder.resolve("theme/theme.properties"), "mine");
    assertEquals("mine", source.read("theme/theme.properties"));
    assertTrue(source.read("theme/print.css").contains("@page"));
  }

  @Test
  void aFileThatIsNowhereIsEmptyOrAProblem() throws Exception {
    assertEquals(Optional.empty(), source.find("theme/none.css"));
    TemplateProblem problem =
        assertThrows(TemplateProblem.class, () -> source.read("theme/none.css"));
    assertEquals("theme/none.css: there is no such file", problem.getMessage());
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "../outside.md",
        "theme/../../outside.md",
        "/etc/passwd",
        "./x",
        "",
        "a//b",
        "a\\..\\b",
        "c:/x",
        "theme/",
        "x\u0000y"
      })
  void noPathLeavesTheFolder(String path) {
    assertThrows(TemplateProblem.class, () -> source.find(path));
  }

  @Test
  void aSymbolicLinkOutOfTheFolderIsRefused() throws Exception {
    Files.createSymbolicLink(folder.resolve("link.md"), place.resolve("outside.md"));
    Files.createSymbolicLink(folder.resolve("up"), place);
    assertThrows(TemplateProblem.class, () -> source.find("link.md"));
    assertThrows(TemplateProblem.class, () -> source.find("up/outside.md"));
    assertThrows(TemplateProblem.class, () -> source.list("up", ".md"));
  }

  @Test
  void aSymbolicLinkInsideTheFolderIsFollowed() throws Exception {
    Files.writeString(folder.resolve("one.md"), "one");
    Files.createSymbolicLink(folder.resolve("two.md"), folder.resolve("one.md"));
    assertEquals("one", source.read("two.md"));
  }

  @Test
  void aFolderIsListedFromBothPlaces() throws Exception {
    Files.createDirectory(folder.resolve("theme"));
    Files.writeString(folder.resolve("theme/more.css"), "");
    assertTrue(source.list("theme", ".css").contains("theme/print.css"));
    assertTrue(source.list("theme", ".css").contains("theme/more.css"));
  }

  @Test
  void textIsUtf8WithAnyLineEndAndMayHaveAByteOrderMark() throws Exception {
    Files.writeString(folder.resolve("a.md"), "\uFEFFé\r\nb");
    assertEquals("é\nb", source.read("a.md"));
    Files.write(folder.resolve("b.md"), "é".getBytes(StandardCharsets.ISO_8859_1));
    TemplateProblem problem = assertThrows(TemplateProblem.class, () -> source.read("b.md"));
    assertEquals("b.md: the file is not UTF-8 text", problem.getMessage());
  }

  @Test
  void aFolderThatIsNotThereIsRefused() {
    assertThrows(IOException.class, () -> TemplateSource.overriddenBy(place.resolve("none")));
    assertThrows(IOException.class, () -> TemplateSource.overriddenBy(place.resolve("outside.md")));
  }

  /** The program is one jar, in which folders can't be listed as files are. */
  @Test
  void theCarriedFilesAreListedFromAJarToo() throws Exception {
    Path jar = place.resolve("program.jar");
    Path classes =
        Path.of(TemplateSource.class.getProtectionDomain().getCodeSource().getLocation().toURI());
    try (ZipOutputStream zip = new ZipOutputStream(Files.newOutputStream(jar));
        Stream<Path> files = Files.walk(classes)) {
      zip.setLevel(Deflater.NO_COMPRESSION);
      for (Path file : files.filter(Files::isRegularFile).toList()) {
        zip.putNextEntry(new ZipEntry(classes.relativize(file).toString().replace('\\', '/')));
        Files.copy(file, zip);
        zip.closeEntry();
      }
    }
    URL[] onlyTheJar = {jar.toUri().toURL()};
    try (URLClassLoader loader =
        new URLClassLoader(onlyTheJar, ClassLoader.getPlatformClassLoader())) {
      Class<?> type = loader.loadClass(TemplateSource.class.getName());
      Object carried = type.getMethod("carried").invoke(null);
      Object listed =
          type.getMethod("list", String.class, String.class).invoke(carried, "theme", ".css");
      assertEquals(TemplateSource.carried().list("theme", ".css"), listed);
      assertEquals(Set.of("theme/print.css"), listed);
    }
  }
}
