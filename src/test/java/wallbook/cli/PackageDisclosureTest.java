package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collection;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSBase;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSObject;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.cos.COSString;
import org.apache.pdfbox.pdmodel.PDDocument;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import wallbook.Jobs;
import wallbook.compose.Disclosure;
import wallbook.compose.DocumentPlan;
import wallbook.compose.Documents;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Place;
import wallbook.record.PlaceUse;
import wallbook.record.Run;
import wallbook.record.RunEnd;
import wallbook.record.SystemKind;

/**
 * Nothing of an alarm or of cameras is in a file that others than the household get: not in its
 * text, its bookmarks, its metadata or what it carries. That these stay with the owner is common
 * practice, no source.
 */
class PackageDisclosureTest {
  private static final Set<SystemKind> SYSTEMS =
      EnumSet.of(SystemKind.SECURITY, SystemKind.CAMERAS);
  private static final Set<PlaceUse> USES =
      EnumSet.of(
          PlaceUse.KEYPAD,
          PlaceUse.CONTACT,
          PlaceUse.MOTION_SENSOR,
          PlaceUse.GLASS_BREAK_SENSOR,
          PlaceUse.REPEATER,
          PlaceUse.CAMERA);

  private static final Job JOB = Jobs.sample("lakeside");
  private static final Set<String> SECRETS = secrets();

  /** Labels of the runs, and labels and names of the places, that the owner alone is told of. */
  private static Set<String> secrets() {
    Set<String> systems =
        JOB.systems().stream()
            .filter(system -> SYSTEMS.contains(system.kind()))
            .map(HouseSystem::id)
            .collect(Collectors.toSet());
    List<Place> places = JOB.places().stream().filter(p -> USES.contains(p.use())).toList();
    Set<String> ids = places.stream().map(Place::id).collect(Collectors.toSet());
    Stream<Run> runs =
        JOB.runs().stream()
            .filter(
                run ->
                    run.system().filter(systems::contains).isPresent()
                        || Stream.of(run.from(), run.to())
                            .map(RunEnd::place)
                            .flatMap(place -> place.stream())
                            .anyMatch(ids::contains));
    return Stream.of(
            runs.map(Run::label),
            places.stream().flatMap(place -> place.label().stream()),
            places.stream().map(Place::name))
        .flatMap(each -> each)
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static Set<String> secretsIn(String text) {
    return SECRETS.stream()
        .filter(text::contains)
        .filter(
            secret ->
                Pattern.compile("(?<![\\p{Alnum}-])" + Pattern.quote(secret) + "(?![\\p{Alnum}-])")
                    .matcher(text)
                    .find())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  /** Files of the package that leave the household or that anybody in it may open. */
  private static List<Path> filesForOthers() {
    Path folder = BuiltSamples.folder("lakeside");
    Set<Path> outside =
        Documents.all().stream()
            .filter(plan -> plan.disclosure() == Disclosure.OUTSIDE)
            .map(DocumentPlan::file)
            .map(folder::resolve)
            .collect(Collectors.toSet());
    return BuiltSamples.files("lakeside").stream()
        .filter(
            file ->
                outside.contains(file)
                    || file.startsWith(folder.resolve("trades"))
                    || file.toString().endsWith(".html"))
        .toList();
  }

  @Test
  void noFileForOthersTellsOfAlarmOrCameras() throws IOException {
    for (Path file : filesForOthers()) {
      assertEquals(Set.of(), secretsIn(everythingIn(file)), file.toString());
    }
  }

  /** What a file for others carries is looked into as it comes back out. */
  @Test
  void noExtractTellsOfAlarmOrCameras(@TempDir Path work) throws IOException {
    List<Path> files = new ArrayList<>(filesForOthers());
    BuiltSamples.files("lakeside").stream()
        .filter(file -> file.getParent().endsWith("labels"))
        .forEach(files::add);
    for (int i = 0; i < files.size(); i++) {
      Path record = work.resolve(i + ".yaml");
      Cli recovered = Cli.run("recover", files.get(i), "--into", record);
      assertEquals(ExitCode.CLEAN, recovered.exitCode(), recovered.err());
      String text = Files.readString(record);
      assertEquals(Set.of(), secretsIn(text), files.get(i).toString());
      for (String use : USES.stream().map(PlaceUse::word).toList()) {
        assertFalse(text.contains("use: " + use), files.get(i) + " holds a " + use);
      }
    }
  }

  /** The search finds what is there: in the text of the owner's own map, and in what it carries. */
  @Test
  void theOwnersOwnMapTellsAll() throws IOException {
    Path map = BuiltSamples.folder("lakeside").resolve("label-map.pdf");
    String everything = everythingIn(map);
    assertTrue(secretsIn(everything).size() > SECRETS.size() / 2);
    assertTrue(everything.contains(Files.readString(Path.of("sample-jobs/lakeside/job.yaml"))));
  }

  /** Text on the pages, every text and stream of every object, unpacked. */
  private static String everythingIn(Path file) throws IOException {
    byte[] bytes = Files.readAllBytes(file);
    if (!file.toString().endsWith(".pdf")) {
      return new String(bytes, StandardCharsets.UTF_8);
    }
    StringBuilder text = new StringBuilder();
    try (PDDocument pdf = Loader.loadPDF(bytes)) {
      text.append(new PDFTextStripper().getText(pdf)).append('\n');
      for (var key : pdf.getDocument().getXrefTable().keySet()) {
        COSObject object = pdf.getDocument().getObjectFromPool(key);
        append(object.getObject(), text);
      }
    }
    return text.toString();
  }

  private static void append(COSBase value, StringBuilder text) throws IOException {
    if (value instanceof COSString said) {
      text.append(said.getString()).append('\n');
    } else if (value instanceof COSStream stream) {
      appendAll(stream.getValues(), text);
      ByteArrayOutputStream out = new ByteArrayOutputStream();
      try (var in = stream.createInputStream()) {
        in.transferTo(out);
      }
      text.append(out.toString(StandardCharsets.UTF_8)).append('\n');
    } else if (value instanceof COSDictionary dictionary) {
      appendAll(dictionary.getValues(), text);
    } else if (value instanceof COSArray array) {
      appendAll(array.toList(), text);
    }
  }

  /** What stands in an object itself; what it points to comes by the table of all objects. */
  private static void appendAll(Collection<? extends COSBase> values, StringBuilder text)
      throws IOException {
    for (COSBase value : values) {
      if (!(value instanceof COSObject)) {
        append(value, text);
      }
    }
  }
}
