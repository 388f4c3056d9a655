package wallbook.cli;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Does what docs/tutorial.md tells the reader to do, from top to bottom. */
class TutorialTest {
  private static final Pattern BLOCK =
      Pattern.compile("```(\\w+)(?: (\\S+))?\\n(.*?)```", Pattern.DOTALL);
  private static final Pattern WORD = Pattern.compile("\"([^\"]*)\"|(\\S+)");
  private static final String EXIT_CODE = "# ends with ";

  @TempDir private Path folder;

  @Test
  void everyStepOfTheTutorialDoesWhatItSays() throws IOException {
    Matcher block = BLOCK.matcher(Files.readString(Path.of("docs", "tutorial.md")));
    List<Cli> runs = new ArrayList<>();
    while (block.find()) {
      switch (block.group(1)) {
        case "sh" -> block.group(3).lines().forEach(line -> runs.add(run(line)));
        case "diff" -> change(folder.resolve(block.group(2)), block.group(3));
        default -> Files.writeString(folder.resolve(block.group(2)), block.group(3));
      }
    }
    Cli compared = runs.get(runs.size() - 1);

    assertEquals(8, runs.size());
    assertTrue(runs.get(2).out().contains("unit-missing"), runs.get(2).out());
    assertTrue(runs.get(5).out().contains("1 added, 0 changed"), runs.get(5).out());
    assertTrue(compared.out().contains("Put in service: run L-02 [l-02]"), compared.out());
    assertTrue(Files.exists(folder.resolve("packages/cottage-r1/homeowner-manual.pdf")));
    assertTrue(Files.exists(folder.resolve("change-notice.pdf")));
  }

  private Cli run(String line) {
    String[] command = line.split(EXIT_CODE, 2);
    List<Object> arguments = new ArrayList<>();
    Matcher word = WORD.matcher(command[0]);
    while (word.find()) {
      if (word.group(1) != null) {
        arguments.add(word.group(1));
      } else if (word.group(2).matches("cottage|packages|.*[/.].*")) {
        arguments.add(folder.resolve(word.group(2)));
      } else {
        arguments.add(word.group(2));
      }
    }
    assertEquals("wallbook", arguments.remove(0));
    Cli run = Cli.run(arguments.toArray());
    if (command.length == 2) {
      assertEquals(Integer.parseInt(command[1].strip()), run.exitCode(), line);
    } else {
      assertTrue(run.exitCode() < ExitCode.ERRORS, line + "\n" + run.out() + run.err());
    }
    return run;
  }

  private static void change(Path file, String diff) throws IOException {
    String text = Files.readString(file);
    String old = side(diff, "-");
    assertTrue(text.contains(old), "not in " + file + ": " + old);
    Files.writeString(file, text.replace(old, side(diff, "+")));
  }

  private static String side(String diff, String sign) {
    return diff.lines()
        .filter(l -> l.startsWith(sign))
        .map(l -> l.substring(1) + "\n")
        .collect(Collectors.joining());
  }
}
