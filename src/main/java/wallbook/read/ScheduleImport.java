package wallbook.read;

import java.io.IOException;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import org.yaml.snakeyaml.nodes.MappingNode;
import org.yaml.snakeyaml.nodes.Node;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.record.JobRecord;
import wallbook.record.Shape;
import wallbook.record.Shape.Field;
import wallbook.wording.Phrase;

/**
 * Merges a schedule into a record: what a row says goes to the thing of its id, new things to the
 * end of the list. Only values that really differ are written; comments, order and the way things
 * are written stay. An empty cell says nothing. The merged text is not checked here: read it, and
 * trace its findings back to cells by {@link Merged#cause}.
 */
public final class ScheduleImport {
  private final Findings findings = new Findings();
  private final SourceFile record;
  private final SourceFile schedule;

  private ScheduleImport(SourceFile record, SourceFile schedule) {
    this.record = record;
    this.schedule = schedule;
  }

  /** A file by the name that findings give it. */
  public record SourceFile(String shown, byte[] bytes) {}

  /**
   * How the schedule is to be read.
   *
   * @param list key of the list it goes to
   * @param mapping names of its columns
   * @param delimiter between cells, before that of the mapping
   * @param encoding of the file, before that of the mapping
   * @param sheet name of the sheet of a workbook, before that of the mapping
   */
  public record Request(
      String list,
      Optional<SourceFile> mapping,
      Optional<String> delimiter,
      Optional<String> encoding,
      Optional<String> sheet) {}

  /**
   * A record with a schedule merged in.
   *
   * @param bytes the new text of the record
   * @param added how many rows became new things
   * @param changed how many rows changed something
   * @param unchanged how many said what the record said already
   * @param cause the cell that a position of the new text goes back to, or that position
   */
  public record Merged(
      byte[] bytes, int added, int changed, int unchanged, UnaryOperator<SourcePosition> cause) {}

  /**
   * What came of it.
   *
   * @param merged the new record, if no finding is an error
   */
  public record Result(Optional<Merged> merged, List<Finding> findings) {}

  /** Merges a schedule into a record. */
  public static Result merge(SourceFile record, SourceFile schedule, Request request) {
    ScheduleImport merge = new ScheduleImport(record, schedule);
    Optional<Merged> merged = merge.run(request);
    return new Result(
        merged.filter(m -> !merge.findings.hasErrors()), merge.findings.inReportOrder());
  }

  private Optional<Merged> run(Request request) {
    Optional<Field> list = list(request.list());
    Optional<ImportMapping> mapping = mapping(request);
    YamlSource source = new YamlSource(new Places(record.shown()), findings);
    Optional<String> text = source.decode(record.bytes());
    Optional<Node> root = text.flatMap(source::compose);
    if (list.isEmpty() || mapping.isEmpty() || !(root.orElse(null) instanceof MappingNode whole)) {
      return Optional.empty();
    }
    ScheduleRows reader =
        new ScheduleRows(Columns.shape(list.get()), mapping.get(), findings, schedule.shown());
    List<ScheduleRows.Given> rows =
        cells(request, mapping.get()).map(reader::read).orElse(List.of());
    if (findings.hasErrors()) {
      return Optional.empty();
    }
    ListMerge merge = new ListMerge(text.get(), whole, list.get(), reader.match(), findings);
    rows.forEach(merge::add);
    TextEdits.Made made = merge.make(record.shown());
    boolean marked = !text.get().isEmpty() && record.bytes()[0] == (byte) 0xef;
    String bytes = (marked ? "\ufeff" : "") + made.text();
    return Optional.of(
        new Merged(
            bytes.getBytes(StandardCharsets.UTF_8),
            merge.added(),
            merge.changed(),
            rows.size() - merge.added() - merge.changed(),
            made::cause));
  }

  private Optional<Field> list(String name) {
    List<Field> lists =
        Shape.of(JobRecord.class).fields().stream()
            .filter(f -> Columns.Form.of(f) == Columns.Form.THING_LIST)
            .toList();
    Optional<Field> list = lists.stream().filter(f -> f.key().equals(name)).findFirst();
    if (list.isEmpty()) {
      List<String> names = lists.stream().map(Field::key).toList();
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "unknown-list",
                  new SourcePosition(schedule.shown(), 1, 1),
                  "list",
                  Binder.shortened(name))
              .found(Binder.shortened(name))
              .expecting(
                  Phrase.of(
                      "expected.one-of",
                      "choices",
                      names.stream().collect(Collectors.joining(", "))))
              .nearest(Nearest.to(name, names)));
    }
    return list;
  }

  private Optional<ImportMapping> mapping(Request request) {
    if (request.mapping().isEmpty()) {
      return Optional.of(ImportMapping.NONE);
    }
    SourceFile file = request.mapping().get();
    Places places = new Places(file.shown());
    return new YamlSource(places, findings)
        .nodes(file.bytes())
        .flatMap(
            node ->
                new Binder(places, findings, new IdRegister(findings))
                    .bind(node, ImportMapping.class));
  }

  private Optional<List<List<CsvText.Cell>>> cells(Request request, ImportMapping mapping) {
    if (WorkbookRows.isWorkbook(schedule.bytes())) {
      return new WorkbookRows(schedule.shown(), findings)
          .read(schedule.bytes(), request.sheet().or(mapping::sheet));
    }
    SourcePosition start = new SourcePosition(schedule.shown(), 1, 1);
    Optional<String> encoding = request.encoding().or(mapping::encoding);
    Optional<String> delimiter = request.delimiter().or(mapping::delimiter);
    try {
      String text = CsvText.decode(schedule.bytes(), encoding.map(Charset::forName));
      char between =
          delimiter.map(d -> d.equals("tab") ? '\t' : d.charAt(0)).orElse(CsvText.delimiter(text));
      return Optional.of(CsvText.rows(text, between, schedule.shown()));
    } catch (CharacterCodingException | IllegalArgumentException e) {
      findings.add(
          Finding.of(
              Severity.ERROR,
              "wrong-encoding",
              start,
              "encoding",
              encoding.orElse(StandardCharsets.UTF_8.name())));
    } catch (IOException e) {
      findings.add(
          Finding.of(
              Severity.ERROR, "file-unreadable", start, "why", String.valueOf(e.getMessage())));
    }
    return Optional.empty();
  }
}
