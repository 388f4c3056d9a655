package wallbook.docs;

import java.io.File;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.List;
import org.junit.jupiter.api.Test;
import wallbook.Approval;

/**
 * Every library, those of the tests too, is to the byte the one that was accepted; so are the
 * sources of the one that is built in.
 */
class LibrariesTest {
  private static final Path BUILT_IN = Path.of("target/picocli/picocli/CommandLine.java");

  @Test
  void everyLibraryHasTheChecksumAccepted() throws Exception {
    List<String> lines = new ArrayList<>();
    for (String entry : System.getProperty("java.class.path").split(File.pathSeparator)) {
      Path file = Path.of(entry);
      if (file.getFileName().toString().endsWith(".jar")) {
        lines.add(file.getFileName() + "  " + sha256(file));
      }
    }
    lines.add("sources of picocli: " + BUILT_IN.getFileName() + "  " + sha256(BUILT_IN));
    Approval.verify("libraries.sha256", String.join("\n", lines.stream().sorted().toList()) + "\n");
  }

  private static String sha256(Path file) throws IOException, NoSuchAlgorithmException {
    MessageDigest digest = MessageDigest.getInstance("SHA-256");
    return HexFormat.of().formatHex(digest.digest(Files.readAllBytes(file)));
  }
}
