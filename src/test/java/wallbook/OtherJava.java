package wallbook;

import java.io.File;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** Programs that tests start beside themselves, with the options that the launcher gives. */
public final class OtherJava {
  /** This Java's home. */
  public static final Path HOME = Path.of(System.getProperty("java.home"));

  private OtherJava() {}

  /** The command of a class of the project, with the classes of the tests. */
  public static List<String> command(Class<?> main, List<String> options, String... arguments) {
    return command(HOME, System.getProperty("java.class.path"), main.getName(), options, arguments);
  }

  /**
   * The command of a class.
   *
   * @param home the Java's own folder
   * @param classpath as the platform writes it, see {@link File#pathSeparator}
   */
  public static List<String> command(
      Path home, String classpath, String main, List<String> options, String... arguments) {
    List<String> command = new ArrayList<>();
    command.add(home.resolve("bin").resolve("java").toString());
    command.addAll(List.of("-XX:+UseSerialGC", "-XX:TieredStopAtLevel=1", "-Xshare:auto"));
    command.add("-Djava.awt.headless=true");
    command.addAll(options);
    command.addAll(List.of("-cp", classpath, main));
    command.addAll(List.of(arguments));
    return command;
  }
}
