package wallbook.cli;

import java.nio.file.Path;
import java.util.Optional;
import picocli.CommandLine;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.read.LabelSheetReader;
import wallbook.reference.Tables;
import wallbook.stock.LabelSheet;
import wallbook.stock.LabelSheets;

/** The label sheets that a command can print on: the program's and the user's own. */
final class LabelSheetsOption {
  /** The kinds of labels, as they are named in commands. */
  static final String KINDS = "cable-wraps, plate-strips, port-strips, conduit-tags";

  @Option(
      names = "--label-sheets",
      paramLabel = "FILE",
      description =
          "Label sheets of your own, in the form of the program's table; one of the same name"
              + " takes the place of the program's.")
  private Optional<Path> file = Optional.empty();

  @Spec(Spec.Target.MIXEE)
  private CommandSpec command;

  /** The user's file of sheets, if the command names one. */
  Optional<Path> file() {
    return file;
  }

  /**
   * All sheets.
   *
   * @param findings takes what is wrong with the user's file
   */
  LabelSheets read(Tables tables, Findings findings) {
    LabelSheets carried = LabelSheets.of(tables);
    return file.map(f -> carried.with(new LabelSheetReader(findings).read(f))).orElse(carried);
  }

  /** The sheet of a name that the command line gives. */
  LabelSheet named(String name, LabelSheets sheets) {
    return sheets
        .named(name)
        .orElseThrow(
            () ->
                refused(
                    "there is no label sheet '"
                        + name
                        + "'"
                        + Nearest.to(name, sheets.all().stream().map(LabelSheet::name).toList())
                            .map(n -> "; did you mean " + n + "?")
                            .orElse("; \"wallbook labels --list-sheets\" lists them")));
  }

  /** The position if the sheet has it. */
  int position(int start, LabelSheet sheet) {
    if (start < 1 || start > sheet.labels()) {
      throw refused(
          "the sheet " + sheet.name() + " has positions 1 to " + sheet.labels() + ", not " + start);
    }
    return start;
  }

  CommandLine.ParameterException refused(String why) {
    return new CommandLine.ParameterException(command.commandLine(), why);
  }
}
