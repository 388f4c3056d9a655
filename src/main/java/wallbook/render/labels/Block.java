package wallbook.render.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.render.Face;
import wallbook.stock.LabelArea;

/** Sets a label and parts beneath it in given sizes, and says whether they fit. */
final class Block {
  /** White between the label and what stands beneath, as a share of the smaller size. */
  private static final double GAP = 0.5;

  /** White between cells, as a share of the size. */
  private static final double CELL_GAP = 0.9;

  /** Least white between letters of two lines. */
  private static final double TOUCH_MM = 0.2;

  private static final double SLACK_MM = 1e-6;

  private final Typesetter type;
  private final LabelArea area;
  private final boolean centred;

  /**
   * @param centred whether lines stand in the middle, else at the left
   */
  Block(Typesetter type, LabelArea area, boolean centred) {
    this.type = type;
    this.area = area;
    this.centred = centred;
  }

  /** The lines, in the middle of the height; empty if they don't fit. */
  Optional<List<TypeLine>> set(List<String> label, List<Part> parts, Sizes sizes) {
    List<Row> head = label.stream().map(t -> row(t, Face.BOLD, sizes.labelPt())).toList();
    if (head.stream().anyMatch(row -> row.widthMm() > area.widthMm() + SLACK_MM)) {
      return Optional.empty();
    }
    // Whether it fits is a matter of the fewest lines; only what fits is worth balancing.
    Optional<List<Row>> filled = rows(parts, sizes.textPt(), false).map(r -> joined(head, r));
    if (filled.filter(this::fits).isEmpty()) {
      return Optional.empty();
    }
    return rows(parts, sizes.textPt(), true)
        .map(r -> joined(head, r))
        .filter(this::fits)
        .or(() -> filled)
        .map(this::placed);
  }

  private boolean fits(List<Row> rows) {
    return heightMm(rows) <= area.heightMm() + SLACK_MM;
  }

  /** Lines on one base line, with their places from the left, and extra white above them. */
  private record Row(List<TypeLine> lines, double pt, double gapMm) {
    double widthMm() {
      TypeLine last = lines.get(lines.size() - 1);
      return last.xMm() + last.widthMm();
    }

    double ascentMm() {
      return lines.stream().mapToDouble(TypeLine::ascentMm).max().orElse(0);
    }

    double descentMm() {
      return lines.stream().mapToDouble(TypeLine::descentMm).max().orElse(0);
    }
  }

  private Row row(String text, Face face, double pt) {
    return new Row(List.of(type.line(text, face, pt)), pt, 0);
  }

  private static List<Row> joined(List<Row> head, List<Row> rows) {
    List<Row> all = new ArrayList<>(head);
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      double gap = i == 0 ? GAP * row.pt() * Typesetter.MM_PER_PT : 0;
      all.add(new Row(row.lines(), row.pt(), gap));
    }
    return all;
  }

  private Optional<List<Row>> rows(List<Part> parts, double pt, boolean balanced) {
    List<Row> rows = new ArrayList<>();
    for (Part part : parts) {
      Optional<List<Row>> more =
          part instanceof Part.Text text
              ? paragraph(text, pt, balanced)
              : columns((Part.Cells) part, pt);
      if (more.isEmpty()) {
        return Optional.empty();
      }
      rows.addAll(more.get());
    }
    return Optional.of(rows);
  }

  private Optional<List<Row>> paragraph(Part.Text text, double pt, boolean balanced) {
    Face face = text.bold() ? Face.BOLD : Face.REGULAR;
    String printable = type.printable(text.form(0));
    return (balanced
            ? type.balanced(printable, face, pt, area.widthMm())
            : type.wrapped(printable, face, pt, area.widthMm()))
        .map(lines -> lines.stream().map(line -> row(line, face, pt)).toList());
  }

  private Optional<List<Row>> columns(Part.Cells cells, double pt) {
    List<TypeLine> lines =
        cells.texts().stream().map(t -> type.line(type.printable(t), Face.REGULAR, pt)).toList();
    double widest = lines.stream().mapToDouble(TypeLine::widthMm).max().orElse(0);
    double gap = CELL_GAP * pt * Typesetter.MM_PER_PT;
    int columns = (int) ((area.widthMm() + gap + SLACK_MM) / (widest + gap));
    if (columns < 1) {
      return Optional.empty();
    }
    List<Row> rows = new ArrayList<>();
    for (int first = 0; first < lines.size(); first += columns) {
      List<TypeLine> row = new ArrayList<>();
      for (int i = first; i < Math.min(first + columns, lines.size()); i++) {
        row.add(lines.get(i).moved((i - first) * (widest + gap), 0));
      }
      rows.add(new Row(row, pt, 0));
    }
    return Optional.of(rows);
  }

  /** Distance from the base line of a row, or the top, to that of the next. */
  private double stepMm(List<Row> rows, int index) {
    Row row = rows.get(index);
    if (index == 0) {
      return row.ascentMm();
    }
    // Within one size the leading decides; where sizes change, letters must not touch.
    Row above = rows.get(index - 1);
    return above.pt() == row.pt()
        ? type.leadingMm(row.pt())
        : row.ascentMm() + Math.max(row.gapMm(), above.descentMm() + TOUCH_MM);
  }

  private double heightMm(List<Row> rows) {
    double height = rows.get(rows.size() - 1).descentMm();
    for (int i = 0; i < rows.size(); i++) {
      height += stepMm(rows, i);
    }
    return height;
  }

  private List<TypeLine> placed(List<Row> rows) {
    List<TypeLine> placed = new ArrayList<>();
    double baseline = area.yMm() + (area.heightMm() - heightMm(rows)) / 2;
    for (int i = 0; i < rows.size(); i++) {
      Row row = rows.get(i);
      baseline += stepMm(rows, i);
      double left = area.xMm() + (centred ? (area.widthMm() - row.widthMm()) / 2 : 0);
      for (TypeLine line : row.lines()) {
        placed.add(line.moved(left, baseline));
      }
    }
    return placed;
  }
}
