package wallbook.read;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Duration;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;

/**
 * What a cell of a workbook says, as a spreadsheet shows it and a record writes it: a date as
 * {@code 2026-05-14}, a number with the digits its format shows and the unit its format puts behind
 * it, yes and no for true and false.
 */
final class ShownCell {
  /** A spreadsheet keeps and shows no more digits (IEEE 754 binary64). */
  private static final MathContext DIGITS = new MathContext(15);

  /** A plain number format: {@code 0}, {@code #,##0.00}, {@code 0.0" ft"}. */
  private static final Pattern NUMBER_FORMAT =
      Pattern.compile("[#,]*0(?:\\.(0+))?(?:\\\\? *\"([^\"]*)\")?(?:_.)?(?:;.*)?");

  /** Letters of a date format, outside quotes, brackets and escapes. */
  private static final Pattern NOT_OF_THE_DATE =
      Pattern.compile("\"[^\"]*\"|\\[[^]]*]|\\\\.|_.|\\*.");

  private final boolean from1904;

  /**
   * @param from1904 whether the workbook counts days from 1904
   */
  ShownCell(boolean from1904) {
    this.from1904 = from1904;
  }

  /** Whether the cell shows a mistake of its formula, such as {@code #N/A}. */
  boolean isMistake(Cell cell) {
    return cell.getType() == CellType.ERROR
        || (cell.getType() == CellType.FORMULA
            && String.valueOf(cell.getRawValue()).startsWith("#"));
  }

  String text(Cell cell) {
    Object value = cell.getValue();
    if (value instanceof BigDecimal number) {
      return text(number, cell.getDataFormatString());
    } else if (value instanceof Boolean yes) {
      return yes ? "yes" : "no";
    } else if (cell.getType() == CellType.FORMULA && cell.getRawValue() != null) {
      return formula(cell);
    }
    return value == null ? "" : value.toString();
  }

  /** The stored outcome of a formula: a number as others are shown, or a text. */
  private String formula(Cell cell) {
    try {
      return text(new BigDecimal(cell.getRawValue()), cell.getDataFormatString());
    } catch (NumberFormatException e) {
      return cell.getRawValue();
    }
  }

  private String text(BigDecimal number, String format) {
    String form = format == null ? "General" : format;
    if (isDate(form)) {
      return day(number);
    }
    Matcher shown = NUMBER_FORMAT.matcher(form);
    if (shown.matches()) {
      int decimals = shown.group(1) == null ? 0 : shown.group(1).length();
      String unit = shown.group(2) == null ? "" : " " + shown.group(2).strip();
      return number.setScale(decimals, RoundingMode.HALF_UP).toPlainString() + unit.stripTrailing();
    }
    BigDecimal plain = number.round(DIGITS).stripTrailingZeros();
    return plain.toPlainString();
  }

  private static boolean isDate(String format) {
    String letters =
        NOT_OF_THE_DATE.matcher(format).replaceAll("").toLowerCase(Locale.ROOT).split(";", 2)[0];
    return letters.contains("y") || (letters.contains("d") && letters.contains("m"));
  }

  /** Serial dates of ECMA-376, 18.17.4.1: day 1 is 1900-01-01, and 1900 counts as a leap year. */
  private String day(BigDecimal serial) {
    LocalDate start = from1904 ? LocalDate.of(1904, 1, 1) : LocalDate.of(1899, 12, 30);
    LocalDateTime moment =
        start
            .atStartOfDay()
            .plus(
                Duration.ofSeconds(
                    serial
                        .multiply(BigDecimal.valueOf(Duration.ofDays(1).toSeconds()))
                        .setScale(0, RoundingMode.HALF_UP)
                        .longValue()));
    return moment.toLocalDate().toString();
  }
}
