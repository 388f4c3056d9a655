package wallbook.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wallbook.stock.LabelSheet;
import wallbook.stock.LabelSheets;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Lists label sheets for a person at a terminal. */
final class SheetList {
  private final Wording wording;
  private final Console console;

  SheetList(Wording wording, Console console) {
    this.wording = wording;
    this.console = console;
  }

  /** Prints a line for each sheet; returns the exit code. */
  int print(LabelSheets sheets) {
    List<List<String>> rows = new ArrayList<>();
    rows.add(
        List.of(
            wording.say("labels.list.name"),
            wording.say("labels.list.purpose"),
            wording.say("labels.list.count"),
            wording.say("labels.list.size"),
            wording.say("labels.list.note")));
    sheets.all().forEach(sheet -> rows.add(row(sheet)));
    int columns = rows.get(0).size();
    int[] widths = new int[columns];
    for (List<String> row : rows) {
      for (int i = 0; i < columns; i++) {
        widths[i] = Math.max(widths[i], row.get(i).length());
      }
    }
    for (List<String> row : rows) {
      StringBuilder line = new StringBuilder();
      for (int i = 0; i < columns; i++) {
        line.append(row.get(i)).append(" ".repeat(widths[i] - row.get(i).length() + 2));
      }
      console.out().println(line.toString().stripTrailing());
    }
    return ExitCode.CLEAN;
  }

  private List<String> row(LabelSheet sheet) {
    LabelSheet.Size size = sheet.label().size();
    String note = sheet.note();
    if (sheet.girth().isPresent()) {
      LabelSheet.Girth girth = sheet.girth().get();
      String cables =
          wording.say(
              Phrase.of(
                  "labels.list.cables",
                  "least",
                  millimetres(girth.leastMm()),
                  "greatest",
                  millimetres(girth.greatestMm())));
      note = note.isEmpty() ? cables : note + "; " + cables;
    }
    return List.of(
        sheet.name() + (sheet.usual() ? " *" : ""),
        wording.say("label-kind." + sheet.purpose().word()),
        Integer.toString(sheet.labels()),
        millimetres(size.widthMm()) + " x " + millimetres(size.heightMm()),
        note);
  }

  private static String millimetres(double mm) {
    return String.format(Locale.ROOT, mm == Math.rint(mm) ? "%.0f" : "%.1f", mm);
  }
}
