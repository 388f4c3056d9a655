package wallbook.bundle;

import java.nio.file.Path;
import java.util.HashMap;
import java.util.List;
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

  private PackagePaths() {}

  /** A single name, such as that of the package. */
  static void checkName(Path into, String name) throws PackageWriteException {
    if (!STEP.matcher(name).matches() || DEVICE.matcher(name).matches() || name.startsWith(".")) {
      throw new PackageWriteException(into.resolve("package"), "'" + name + "' is no name for it");
    }
  }

  /** The paths of all files: each inside the package, none twice, also where case is ignored. */
  static void check(Path folder, List<PackageFile> files) throws PackageWriteException {
    Map<String, String> taken = new HashMap<>();
    taken.put(key(Manifest.NAME), Manifest.NAME);
    for (PackageFile file : files) {
      String path = file.path();
      for (String step : path.split("/", -1)) {
        if (!STEP.matcher(step).matches() || DEVICE.matcher(step).matches()) {
          throw new PackageWriteException(folder, "'" + path + "' is no path for a file in it");
        }
      }
      String other = taken.put(key(path), path);
      if (other != null) {
        throw new PackageWriteException(folder, "'" + path + "' and '" + other + "' are one file");
      }
    }
    for (PackageFile file : files) {
      String path = file.path();
      for (int slash = path.indexOf('/'); slash > 0; slash = path.indexOf('/', slash + 1)) {
        String above = path.substring(0, slash);
        if (taken.containsKey(key(above))) {
          throw new PackageWriteException(folder, "'" + above + "' is a file and a folder");
        }
      }
    }
  }

  private static String key(String path) {
    return path.toLowerCase(Locale.ROOT);
  }
}
