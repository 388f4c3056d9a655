package wallbook.read;

import java.util.regex.Pattern;

/**
 * Keeps a spreadsheet from taking a text for a formula: a cell that begins like one gets an
 * apostrophe in front, which {@link #undo} takes away again. Plain numbers need none. See OWASP,
 * "CSV Injection", for the beginnings that spreadsheets act on.
 */
final class FormulaGuard {
  private static final String BEGINNINGS = "=+-@\t\r'";
  private static final Pattern NUMBER = Pattern.compile("[+-]?\\d+(\\.\\d+)?");

  private FormulaGuard() {}

  static String guard(String cell) {
    boolean acts = !cell.isEmpty() && BEGINNINGS.indexOf(cell.charAt(0)) >= 0;
    return acts && !NUMBER.matcher(cell).matches() ? "'" + cell : cell;
  }

  static String undo(String cell) {
    boolean guarded =
        cell.length() > 1 && cell.charAt(0) == '\'' && BEGINNINGS.indexOf(cell.charAt(1)) >= 0;
    return guarded ? cell.substring(1) : cell;
  }
}
