package wallbook.cli;

import java.nio.file.Path;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Option;
import wallbook.finding.Findings;
import wallbook.record.Paper;
import wallbook.reference.Tables;
import wallbook.stock.LabelKind;
import wallbook.stock.LabelSheet;
import wallbook.stock.LabelSheets;
import wallbook.stock.Stock;

/** How the labels of a whole package are laid out. */
final class LabelOptions {
  @Mixin private LabelSheetsOption sheets;

  @Option(
      names = "--label-sheet",
      paramLabel = "NAME",
      description =
          "Sheet or tape to lay labels out for, at most one for each kind of label. Usual: a"
              + " sheet of the paper. \"wallbook labels --list-sheets\" lists them.")
  private List<String> names = List.of();

  @Option(
      names = "--label-start",
      paramLabel = "KIND=POSITION",
      description =
          "Where the first label goes on the first sheet, row by row from 1, if the sheet is"
              + " partly used. KIND is one of "
              + LabelSheetsOption.KINDS
              + ".")
  private Map<LabelKind, Integer> starts = Map.of();

  /** The user's file of sheets, if the command names one. */
  Optional<Path> file() {
    return sheets.file();
  }

  /**
   * What to print a kind of label on.
   *
   * @param start position of the first label, from 1
   */
  record Choice(LabelSheet sheet, int start) {}

  /**
   * The sheet of each kind of label: the one named, else the usual one of the paper.
   *
   * @param findings takes what is wrong with a file of the user's
   */
  Map<LabelKind, Choice> choice(Tables tables, Paper paper, Findings findings) {
    LabelSheets all = sheets.read(tables, findings);
    Map<LabelKind, LabelSheet> named = new EnumMap<>(LabelKind.class);
    if (!findings.hasErrors()) {
      for (String name : names) {
        LabelSheet sheet = sheets.named(name, all);
        if (named.put(sheet.purpose(), sheet) != null) {
          throw sheets.refused("two sheets for " + sheet.purpose().hyphened());
        }
      }
    }
    Map<LabelKind, Choice> choice = new EnumMap<>(LabelKind.class);
    for (LabelKind kind : LabelKind.values()) {
      LabelSheet sheet = named.getOrDefault(kind, all.usual(kind, stock(paper)));
      choice.put(kind, new Choice(sheet, sheets.position(starts.getOrDefault(kind, 1), sheet)));
    }
    return choice;
  }

  /** The usual sheets of a paper, from their first position. */
  static Map<LabelKind, Choice> usual(Tables tables, Paper paper) {
    LabelSheets all = LabelSheets.of(tables);
    Map<LabelKind, Choice> choice = new EnumMap<>(LabelKind.class);
    for (LabelKind kind : LabelKind.values()) {
      choice.put(kind, new Choice(all.usual(kind, stock(paper)), 1));
    }
    return choice;
  }

  /** Sheets of the paper. */
  static Stock stock(Paper paper) {
    return paper == Paper.A4 ? Stock.A4 : Stock.LETTER;
  }
}
