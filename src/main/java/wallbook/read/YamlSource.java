package wallbook.read;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.CharsetDecoder;
import java.nio.charset.CodingErrorAction;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.error.MarkedYAMLException;
import org.yaml.snakeyaml.error.YAMLException;
import org.yaml.snakeyaml.nodes.Node;
import org.yaml.snakeyaml.parser.ParserImpl;
import org.yaml.snakeyaml.reader.ReaderException;
import org.yaml.snakeyaml.reader.StreamReader;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;

/**
 * Turns the bytes of a YAML file into its nodes, or says why it can't. Never constructs objects.
 */
final class YamlSource {
  /** Largest file read. A house of 10,000 runs takes about a third of it. */
  static final int MOST_BYTES = 32 * 1024 * 1024;

  private static final int DEEPEST = 24;
  private static final int MOST_ALIASES = 200;

  private final Places places;
  private final Findings findings;

  YamlSource(Places places, Findings findings) {
    this.places = places;
    this.findings = findings;
  }

  Optional<Node> nodes(byte[] bytes) {
    return nodes(bytes, (key, value) -> {});
  }

  /**
   * The same, telling each value of the outermost mapping as soon as it is complete, whatever
   * mistakes may follow.
   */
  Optional<Node> nodes(byte[] bytes, SectionComposer.Listener listener) {
    if (bytes.length > MOST_BYTES) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "record-too-large",
              places.start(),
              "megabytes",
              MOST_BYTES / 1024 / 1024));
      return Optional.empty();
    }
    return decode(bytes).flatMap(text -> compose(text, listener));
  }

  /** The text of a file without a byte order mark. */
  Optional<String> decode(byte[] bytes) {
    CharsetDecoder decoder =
        StandardCharsets.UTF_8
            .newDecoder()
            .onMalformedInput(CodingErrorAction.REPORT)
            .onUnmappableCharacter(CodingErrorAction.REPORT);
    ByteBuffer in = ByteBuffer.wrap(bytes);
    try {
      String text = decoder.decode(in).toString();
      return Optional.of(text.startsWith("\ufeff") ? text.substring(1) : text);
    } catch (CharacterCodingException e) {
      findings.add(Finding.of(Severity.ERROR, "not-utf-8", positionOfByte(bytes, in.position())));
      return Optional.empty();
    }
  }

  private SourcePosition positionOfByte(byte[] bytes, int at) {
    int line = 1;
    int lineStart = 0;
    for (int i = 0; i < at; i++) {
      if (bytes[i] == '\n') {
        line++;
        lineStart = i + 1;
      }
    }
    String before = new String(bytes, lineStart, at - lineStart, StandardCharsets.UTF_8);
    return new SourcePosition(places.file(), line, before.codePointCount(0, before.length()) + 1);
  }

  /** The nodes of a text. */
  Optional<Node> compose(String text) {
    return compose(text, (key, value) -> {});
  }

  private Optional<Node> compose(String text, SectionComposer.Listener listener) {
    LoaderOptions options = new LoaderOptions();
    options.setCodePointLimit(MOST_BYTES);
    options.setNestingDepthLimit(DEEPEST);
    options.setMaxAliasesForCollections(MOST_ALIASES);
    options.setAllowRecursiveKeys(false);
    try {
      ParserImpl parser = new ParserImpl(new StreamReader(text), options);
      Node node = new SectionComposer(parser, options, listener).getSingleNode();
      if (node == null) {
        findings.add(Finding.of(Severity.ERROR, "empty-record", places.start()));
      }
      return Optional.ofNullable(node);
    } catch (MarkedYAMLException e) {
      SourcePosition at =
          e.getProblemMark() == null ? places.start() : places.of(e.getProblemMark());
      findings.add(Finding.of(Severity.ERROR, "yaml-syntax", at, "problem", e.getProblem()));
    } catch (ReaderException e) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "forbidden-character",
              positionOfCharacter(text, e.getPosition()),
              "code",
              String.format("U+%04X", e.getCodePoint())));
    } catch (YAMLException e) {
      findings.add(
          Finding.of(Severity.ERROR, "yaml-syntax", places.start(), "problem", e.getMessage()));
    }
    return Optional.empty();
  }

  private SourcePosition positionOfCharacter(String text, int codePoints) {
    int end =
        text.offsetByCodePoints(0, Math.min(codePoints, text.codePointCount(0, text.length())));
    int line = 1 + (int) text.substring(0, end).chars().filter(c -> c == '\n').count();
    int lineStart = text.lastIndexOf('\n', Math.max(0, end - 1)) + 1;
    return new SourcePosition(
        places.file(),
        line,
        Math.max(1, text.codePointCount(lineStart, Math.max(lineStart, end)) + 1));
  }
}
