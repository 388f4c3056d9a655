package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.image.BufferedImage;
import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.pdmodel.encryption.InvalidPasswordException;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/**
 * A build that stays, beside which files are saved. A save is whole at once, as editors do it that
 * save by renaming; each begins when it is said that the next save is waited for. The time allowed
 * only ends what would wait for ever.
 */
@Timeout(300)
class BuildWatchTest {
  private static final String WAITING = "waiting for the next save";

  @TempDir private Path folder;
  private Path record;
  private String flat;

  @BeforeEach
  void save() throws IOException {
    flat = Files.readString(Path.of("sample-jobs/flat/job.yaml"));
    record = Files.writeString(folder.resolve("job.yaml"), flat);
  }

  private Path save(String name, byte[] bytes) throws IOException {
    Path file = folder.resolve(name);
    Path whole = Files.write(folder.resolve("being-saved"), bytes);
    Files.createDirectories(file.getParent());
    return Files.move(whole, file, StandardCopyOption.ATOMIC_MOVE);
  }

  private Path save(String name, String text) throws IOException {
    return save(name, text.getBytes(StandardCharsets.UTF_8));
  }

  private byte[] zip() throws IOException {
    return Files.readAllBytes(folder.resolve("flat-r1.zip"));
  }

  private Staying build(Object... options) {
    List<Object> command = new ArrayList<>(List.of("build", record, "--into", folder, "--watch"));
    command.addAll(List.of(options));
    return new Staying(command.toArray());
  }

  /** The package as a process makes it that ends. */
  private byte[] zipOfASingleBuild(Object... options) throws IOException {
    Path into = folder.resolve("single");
    List<Object> command = new ArrayList<>(List.of("build", record, "--into", into));
    command.addAll(List.of(options));
    Cli.run(command.toArray());
    return Files.readAllBytes(into.resolve("flat-r1.zip"));
  }

  @Test
  void theFirstBuildIsToldAtLengthAndLaterOnesInOneLine() throws Exception {
    String single = Cli.run("build", record, "--into", folder).out();
    try (Staying build = build()) {
      String first = build.await(WAITING, 1);
      assertTrue(first.startsWith(single), first);
      assertEquals(single.lines().count() + 1, first.lines().count(), first);
      save("job.yaml", flat + "# a remark\n");
      String later = build.await(WAITING, 2).substring(first.length());
      assertTrue(
          later.matches(
              "\\Q"
                  + folder.resolve("flat-r1")
                  + "\\E: built in [0-9,]+\\.[0-9] s\\. 0 errors, 0 warnings, 0 remarks\\R"
                  + "[0-9]{2}:[0-9]{2}:[0-9]{2}: waiting for the next save\\. Ctrl-C ends\\.\\R"),
          later);
    }
  }

  @Test
  void aSavedRecordGivesThePackageOfASingleBuildThoughThatLiesBesideIt() throws Exception {
    try (Staying build = build()) {
      build.await(WAITING, 1);
      save("job.yaml", flat.replace("Home network", "Network of the flat"));
      build.await(WAITING, 2);
      assertArrayEquals(zipOfASingleBuild(), zip());
      save("job.yaml", flat);
      String said = build.await(WAITING, 3);
      assertArrayEquals(zipOfASingleBuild(), zip());
      assertEquals(3, Staying.count(WAITING, said), said);
    }
  }

  @Test
  void aPictureNamedLaterIsNoticedWhenItComesAndWhenItChanges() throws Exception {
    try (Staying build = build()) {
      build.await(WAITING, 1);
      save(
          "job.yaml",
          flat.replace("  invented: yes\n", "  invented: yes\n  look: {logo: shop/logo.png}\n"));
      assertTrue(build.await(WAITING, 2).contains("0 errors, 1 warning,"), build::said);
      byte[] without = zip();
      save("shop/logo.png", picture(0x204060));
      build.await(WAITING, 3);
      byte[] blue = zip();
      assertFalse(Arrays.equals(without, blue));
      assertArrayEquals(zipOfASingleBuild(), blue);
      save("shop/logo.png", picture(0x602040));
      build.await(WAITING, 4);
      assertArrayEquals(zipOfASingleBuild(), zip());
      assertFalse(Arrays.equals(blue, zip()));
    }
  }

  private static byte[] picture(int colour) throws IOException {
    BufferedImage image = new BufferedImage(300, 100, BufferedImage.TYPE_INT_RGB);
    for (int x = 0; x < 300; x++) {
      image.setRGB(x, x / 3, colour);
    }
    ByteArrayOutputStream bytes = new ByteArrayOutputStream();
    ImageIO.write(image, "png", bytes);
    return bytes.toByteArray();
  }

  @Test
  void aTemplateTakesEffectAndAMistakeInItWaitsToBeMended() throws Exception {
    Path templates = Files.createDirectories(folder.resolve("mine"));
    String program = Files.readString(Path.of("templates/rack-door-card.md"));
    try (Staying build = build("--templates", templates)) {
      build.await(WAITING, 1);
      byte[] carried = zip();
      save("mine/rack-door-card.md", program + "\n${nothing}\n");
      build.await(WAITING, 2);
      assertTrue(build.errors().contains("wallbook: rack-door-card.md:"), build::errors);
      assertArrayEquals(carried, zip());
      save("mine/rack-door-card.md", program + "\nA line of our own.\n");
      build.await(WAITING, 3);
      assertArrayEquals(zipOfASingleBuild("--templates", templates), zip());
      assertFalse(Arrays.equals(carried, zip()));
      String words = "build.again={folder}: gemacht in {seconds} s. {summary}\n";
      save("mine/words/en-GB.properties", words);
      assertTrue(build.await(WAITING, 4).contains("gemacht"), build::said);
    }
  }

  @Test
  void aRecordWithErrorsLeavesThePackageAndWaitsToBeMended() throws Exception {
    save("job.yaml", flat.replace("revision: 1\n", "revision: one\n"));
    try (Staying build = build()) {
      build.await(WAITING, 1);
      assertTrue(build.errors().contains("[not-a-whole-number]"), build::errors);
      assertTrue(build.errors().contains("Nothing was written."), build::errors);
      assertFalse(Files.exists(folder.resolve("flat-r1")));
      save("job.yaml", flat);
      assertTrue(build.await(WAITING, 2).contains("The handover package is in"), build::said);
      byte[] sound = zip();
      save("job.yaml", flat.substring(0, flat.length() / 2) + "\n  : [");
      build.await(WAITING, 3);
      assertArrayEquals(sound, zip());
      Files.delete(record);
      build.await(WAITING, 4);
      assertTrue(build.errors().contains("[file-unreadable]"), build::errors);
      assertArrayEquals(sound, zip());
      save("job.yaml", flat);
      build.await(WAITING, 5);
      assertArrayEquals(sound, zip());
    }
  }

  @Test
  void whatCantBeStoredIsToldAndWaits() throws Exception {
    Path taken = Files.createDirectories(folder.resolve("flat-r1"));
    try (Staying build = build()) {
      build.await(WAITING, 1);
      assertTrue(build.errors().contains("is not a package"), build::errors);
      Files.delete(taken);
      save("job.yaml", flat + "# a remark\n");
      assertTrue(build.await(WAITING, 2).contains("The handover package is in"), build::said);
    }
  }

  @Test
  void savedLabelSheetsAreNoticed() throws Exception {
    Path sheets = save("sheets.csv", "no sheets\n");
    try (Staying build = build("--label-sheets", sheets)) {
      build.await(WAITING, 1);
      assertTrue(build.errors().contains("[missing-column]"), build::errors);
      Path table = Path.of("src/main/resources/wallbook/reference/label-sheets.csv");
      save("sheets.csv", Files.readAllBytes(table));
      assertTrue(build.await(WAITING, 2).contains("The handover package is in"), build::said);
    }
  }

  @Test
  void thePasswordOfTheAnnexIsReadOnce() throws Exception {
    Path password = save("password.txt", "tall-grass-by-the-pier\n");
    try (Staying build = build("--annex-password-file", password)) {
      build.await(WAITING, 1);
      Files.delete(password);
      save("job.yaml", flat + "# a remark\n");
      build.await(WAITING, 2);
      Path annex = folder.resolve("flat-r1/security-annex.pdf");
      assertThrows(InvalidPasswordException.class, () -> Loader.loadPDF(annex.toFile()));
      Loader.loadPDF(annex.toFile(), "tall-grass-by-the-pier").close();
    }
  }

  @Test
  void itSpeaksTheLanguageOfTheRecord() throws Exception {
    save("job.yaml", flat.replace("language: en-GB", "language: es-MX"));
    try (Staying build = build()) {
      build.await("en espera del próximo guardado", 1);
      save("job.yaml", flat.replace("language: en-GB", "language: es-ES"));
      assertTrue(
          build.await("en espera del próximo guardado", 2).contains(": construido en "),
          build::said);
    }
  }

  @Test
  void aCommandThatNoSaveCanMendEnds() {
    assertEquals(
        ExitCode.USAGE,
        Cli.run("build", record, "--watch", "--into", folder, "--label-sheet", "none").exitCode());
    assertEquals(
        ExitCode.FAILED,
        Cli.run("build", record, "--watch", "--templates", folder.resolve("none")).exitCode());
  }
}
