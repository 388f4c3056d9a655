package wallbook.bundle;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;

/** Keeps the paths of a package to what every file system stores, inside the package. */
final class PackagePaths {
  private static final Pattern STEP =
      Pattern.compile("[^\\x00-\\x1f\\x7f<>:\"/\\\\|?*]*[^\\x00-\\x1f\\x7f<>:\"/\\\\|?*. ]");

  /** Names that one wide-spread system keeps for devices, with any ending. */
  private static final Pattern DEVICE =
      Pattern.compile("(?i)(con|prn|aux|nul|com[0-9]|lpt[0-9])(\\..*)?");

  private final Path folder;
  private final Map<String, String> files = new HashMap<>();
  private final Map<String, String> folders = new HashMap<>();

  /**
   * @param folder the package, for messages
   */
  PackagePaths(Path folder) {
    this.folder = folder;
    files.put(key(Manifest.NAME), Manifest.NAME);
  }

  /** A single name, such as that of the package. */
  static void checkName(Path into, String name) throws PackageWriteException {
    if (!STEP.matcher(name).matches() || DEVICE.matcher(name).matches() || name.startsWith(".")) {
      throw new PackageWriteException(into.resolve("package"), "'" + name + "' is no name for it");
    }
  }

  /**
   * Takes the path of a file: inside the package, and none twice, also where case is ignored.
   *
   * @throws PackageWriteException if it is no such path
   */
  synchronized void take(String path) throws PackageWriteException {
    for (String step : path.split("/", -1)) {
      if (!STEP.matcher(step).matches() || DEVICE.matcher(step).matches()) {
        throw new PackageWriteException(folder, "'" + path + "' is no path for a file in it");
      }
    }
    String other = files.put(key(path), path);
    if (other != null) {
      throw new PackageWriteException(folder, "'" + path + "' and '" + other + "' are one file");
    }
    for (int slash = path.indexOf('/'); slash > 0; slash = path.indexOf('/', slash + 1)) {
      folders.putIfAbsent(key(path.substring(0, slash)), path.substring(0, slash));
    }
    for (Map.Entry<String, String> above : folders.entrySet()) {
      if (files.containsKey(above.getKey())) {
        throw new PackageWriteException(
            folder, "'" + above.getValue() + "' is a file and a folder");
      }
    }
  }

  private static String key(String path) {
    return path.toLowerCase(Locale.ROOT);
  }
}
