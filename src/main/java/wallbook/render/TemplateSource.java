package wallbook.render;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.net.JarURLConnection;
import java.net.URI;
import java.net.URISyntaxException;
import java.net.URL;
import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.SortedSet;
import java.util.TreeSet;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Stream;

/**
 * Where templates, words and theme files are read from: the ones the program carries, each of which
 * a file of the same path in a folder of the user's replaces.
 *
 * <p>A path has slashes and lies below the templates folder: {@code theme/print.css}. No path leads
 * out of the user's folder, neither by {@code ..} nor by a symbolic link.
 */
public final class TemplateSource {
  private static final String CARRIED = "/templates/";

  private static volatile List<String> inJar;

  private final Optional<Path> folder;
  private final Set<Path> files = ConcurrentHashMap.newKeySet();
  private final Set<Path> folders = ConcurrentHashMap.newKeySet();

  private TemplateSource(Optional<Path> folder) {
    this.folder = folder;
  }

  /** The templates that the program carries. */
  public static TemplateSource carried() {
    return new TemplateSource(Optional.empty());
  }

  /**
   * The templates that the program carries, overridden by the files of a folder.
   *
   * @throws IOException if there is no such folder
   */
  public static TemplateSource overriddenBy(Path folder) throws IOException {
    Path real = folder.toRealPath();
    if (!Files.isDirectory(real)) {
      throw new IOException(folder + " is not a folder");
    }
    return new TemplateSource(Optional.of(real));
  }

  /**
   * The files of the user's folder that were asked for so far, and those that could have taken the
   * place of the program's but were not there.
   */
  public Set<Path> usersFiles() {
    return Set.copyOf(files);
  }

  /** The folders in the user's folder whose files were listed so far, there or not. */
  public Set<Path> usersFolders() {
    return Set.copyOf(folders);
  }

  /** Whether it is the program's own templates and nothing else. */
  boolean isCarried() {
    return folder.isEmpty();
  }

  /**
   * Reads a file as UTF-8 text.
   *
   * @return the text with line ends as {@code \n}, or empty if neither place has such a file
   * @throws TemplateProblem if the path leads out of the folder or the file is not UTF-8
   */
  public Optional<String> find(String path) throws TemplateProblem {
    Optional<byte[]> bytes = bytes(path);
    return bytes.isEmpty() ? Optional.empty() : Optional.of(decode(path, bytes.get()));
  }

  /**
   * Reads a file that must be there.
   *
   * @throws TemplateProblem if it is not, or can't be read
   */
  public String read(String path) throws TemplateProblem {
    return find(path).orElseThrow(() -> new TemplateProblem(path, "there is no such file"));
  }

  /**
   * The paths of all files of a folder (and not of the folders in it) with a name ending so, from
   * both places, in order.
   */
  public SortedSet<String> list(String inFolder, String ending) throws TemplateProblem {
    checkPath(inFolder);
    SortedSet<String> paths = new TreeSet<>();
    folder.ifPresent(f -> folders.add(f.resolve(inFolder)));
    try {
      listCarried(inFolder + "/", paths);
      Optional<Path> users = inUsersFolder(inFolder);
      if (users.isPresent() && Files.isDirectory(users.get())) {
        try (Stream<Path> files = Files.list(users.get())) {
          files
              .filter(Files::isRegularFile)
              .forEach(file -> paths.add(inFolder + "/" + file.getFileName()));
        }
      }
    } catch (IOException | URISyntaxException e) {
      throw new TemplateProblem(inFolder, 0, 0, "the folder can't be read: " + e.getMessage(), e);
    }
    paths.removeIf(path -> !path.endsWith(ending));
    return paths;
  }

  private Optional<byte[]> bytes(String path) throws TemplateProblem {
    checkPath(path);
    folder.ifPresent(f -> files.add(f.resolve(path)));
    try {
      Optional<Path> users = inUsersFolder(path);
      if (users.isPresent() && Files.isRegularFile(users.get())) {
        return Optional.of(Files.readAllBytes(users.get()));
      }
      try (InputStream carried = TemplateSource.class.getResourceAsStream(CARRIED + path)) {
        return carried == null ? Optional.empty() : Optional.of(carried.readAllBytes());
      }
    } catch (IOException e) {
      throw new TemplateProblem(path, 0, 0, "the file can't be read: " + e.getMessage(), e);
    }
  }

  /** What the user's folder has at the path, all links followed. */
  private Optional<Path> inUsersFolder(String path) throws IOException, TemplateProblem {
    if (folder.isEmpty() || !Files.exists(folder.get().resolve(path))) {
      return Optional.empty();
    }
    Path real = folder.get().resolve(path).toRealPath();
    if (!real.startsWith(folder.get())) {
      throw new TemplateProblem(path, "the file lies outside the templates folder");
    }
    return Optional.of(real);
  }

  private static void checkPath(String path) throws TemplateProblem {
    boolean odd =
        path.isEmpty() || path.startsWith("/") || path.contains("\\") || path.contains(":");
    for (String step : path.split("/", -1)) {
      odd |= Set.of("", ".", "..").contains(step) || step.indexOf('\0') >= 0;
    }
    if (odd) {
      throw new TemplateProblem(path, "not a path below the templates folder");
    }
  }

  private static String decode(String path, byte[] bytes) throws TemplateProblem {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.replace("\r\n", "\n").replaceFirst("^\uFEFF", "");
    } catch (CharacterCodingException e) {
      throw new TemplateProblem(path, 0, 0, "the file is not UTF-8 text", e);
    }
  }

  private static void listCarried(String prefix, SortedSet<String> paths)
      throws IOException, URISyntaxException {
    URL anchor = TemplateSource.class.getResource(CARRIED + Theme.MEASURES);
    if (anchor == null) {
      throw new UncheckedIOException(new IOException("the program lacks its templates"));
    }
    if (anchor.openConnection() instanceof JarURLConnection jar) {
      for (String path : inJar(jar)) {
        if (path.startsWith(prefix) && path.indexOf('/', prefix.length()) < 0) {
          paths.add(path);
        }
      }
      return;
    }
    String toAnchor = anchor.toString();
    String root = toAnchor.substring(0, toAnchor.length() - Theme.MEASURES.length());
    Path carried = Path.of(new URI(root + prefix));
    if (Files.isDirectory(carried)) {
      try (Stream<Path> files = Files.list(carried)) {
        files.filter(Files::isRegularFile).forEach(file -> paths.add(prefix + file.getFileName()));
      }
    }
  }

  /** Paths of all templates in the program's jar, which is large, and looked through once. */
  private static List<String> inJar(JarURLConnection jar) throws IOException {
    List<String> found = inJar;
    if (found == null) {
      String start = CARRIED.substring(1);
      found =
          jar.getJarFile().stream()
              .map(entry -> entry.getName())
              .filter(name -> name.startsWith(start))
              .map(name -> name.substring(start.length()))
              .toList();
      inJar = found;
    }
    return found;
  }
}
