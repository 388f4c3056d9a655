package wallbook.render.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import wallbook.compose.labels.CableWrap;
import wallbook.compose.labels.ConduitTag;
import wallbook.compose.labels.Label;
import wallbook.compose.labels.PlateStrip;
import wallbook.compose.labels.PortStrip;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.stock.LabelArea;
import wallbook.stock.LabelSheet;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Lays labels out on the label of one sheet; what doesn't fit legibly becomes a finding. */
final class FaceLayout {
  /** White between a code's border and the text beside it. */
  private static final double CODE_GAP_MM = 0.6;

  /** White between the two texts of a wrap, on either side. */
  private static final double HALF_GAP_MM = 0.2;

  private final LabelSheet sheet;
  private final Wording wording;
  private final Stack stack;
  private final CodeFitter codes;
  private final Findings findings;
  private final LabelArea whole;

  FaceLayout(LabelSheet sheet, Wording wording, Stack stack, CodeFitter codes, Findings findings) {
    this.sheet = sheet;
    this.wording = wording;
    this.stack = stack;
    this.codes = codes;
    this.findings = findings;
    LabelSheet.Parts parts = sheet.label();
    this.whole =
        new LabelArea(
            0, 0, parts.size().widthMm(), parts.printedHeightMm().orElse(parts.size().heightMm()));
  }

  /** The face of a label, if it fits. */
  Optional<LabelFace> lay(Label label) {
    if (label instanceof CableWrap wrap) {
      return sheet.label().neckMm().isPresent() ? flag(wrap) : band(wrap);
    } else if (label instanceof PlateStrip strip) {
      return plate(strip);
    } else if (label instanceof PortStrip strip) {
      return new PortCells(sheet, stack, findings).lay(strip);
    } else {
      return tag((ConduitTag) label);
    }
  }

  /** Two faces with the neck between them; a code stands on the outer edge of the left one. */
  private Optional<LabelFace> flag(CableWrap wrap) {
    double neck = sheet.label().neckMm().orElseThrow();
    double width = (whole.widthMm() - neck) / 2;
    LabelArea left = new LabelArea(0, 0, width, whole.heightMm());
    LabelArea right = left.moved(width + neck, 0);
    Optional<LabelFace> back =
        withCode(HouseSizes.Slot.BACK, wrap, at(wrap.thisEnd()), wrap.code(), left);
    Optional<LabelFace> front =
        face(HouseSizes.Slot.FRONT, wrap, to(wrap.otherEnd()), inner(right));
    return back.flatMap(b -> front.map(b::and));
  }

  /**
   * Text along the cable. On a self-laminating wrap the label stands twice, so that it can be read
   * from more than one side: once with the other end, once with this.
   */
  private Optional<LabelFace> band(CableWrap wrap) {
    List<Part> parts = new ArrayList<>(said("label.at", wrap.thisEnd(), true));
    parts.addAll(to(wrap.otherEnd()));
    if (sheet.label().printedHeightMm().isEmpty()) {
      return withCode(HouseSizes.Slot.WHOLE, wrap, parts, wrap.code(), whole);
    }
    LabelArea inner = inner(whole);
    LabelArea half =
        new LabelArea(inner.xMm(), inner.yMm(), inner.widthMm(), inner.heightMm() / 2)
            .inset(HALF_GAP_MM);
    Optional<List<TypeLine>> upper =
        stack.set(HouseSizes.Slot.FRONT, wrap.label(), to(wrap.otherEnd()), half, true);
    Optional<List<TypeLine>> lower =
        stack.set(
            HouseSizes.Slot.BACK,
            wrap.label(),
            at(wrap.thisEnd()),
            half.moved(0, inner.heightMm() / 2),
            true);
    if (upper.isPresent() && lower.isPresent()) {
      return Optional.of(LabelFace.of(upper.get()).and(LabelFace.of(lower.get())));
    }
    return face(HouseSizes.Slot.WHOLE, wrap, parts, inner);
  }

  private Optional<LabelFace> plate(PlateStrip strip) {
    List<Part> parts = new ArrayList<>();
    if (!strip.where().isEmpty()) {
      parts.add(new Part.Text(strip.where(), false, true));
    }
    if (!strip.jacks().isEmpty()) {
      parts.add(new Part.Cells(strip.jacks()));
    }
    return withCode(HouseSizes.Slot.WHOLE, strip, parts, strip.code(), whole);
  }

  private Optional<LabelFace> tag(ConduitTag tag) {
    List<Part> parts = new ArrayList<>(at(tag.thisEnd()));
    parts.addAll(to(tag.otherEnd()));
    parts.add(new Part.Text(List.of(tag.state()), true, false));
    tag.facts().forEach(fact -> parts.add(new Part.Text(List.of(fact), false, true)));
    return withCode(HouseSizes.Slot.WHOLE, tag, parts, tag.code(), whole);
  }

  /** Text with the code at its left, if the sheet has room kept for one. */
  private Optional<LabelFace> withCode(
      HouseSizes.Slot slot, Label label, List<Part> parts, List<String> code, LabelArea area) {
    LabelArea inner = inner(area);
    if (sheet.label().codeMm().isEmpty()) {
      return face(slot, label, parts, inner);
    }
    double side = sheet.label().codeMm().getAsDouble();
    LabelArea room =
        new LabelArea(inner.xMm(), inner.yMm() + (inner.heightMm() - side) / 2, side, side);
    Optional<ScanCode> scanCode = codes.fit(code, room);
    if (scanCode.isEmpty()) {
      refuse("label-code-does-not-fit", label);
    }
    double taken = side + CODE_GAP_MM;
    LabelArea beside =
        new LabelArea(inner.xMm() + taken, inner.yMm(), inner.widthMm() - taken, inner.heightMm());
    Optional<LabelFace> text = face(slot, label, parts, beside);
    return scanCode.isEmpty() ? Optional.empty() : text.map(t -> t.with(scanCode));
  }

  private Optional<LabelFace> face(
      HouseSizes.Slot slot, Label label, List<Part> parts, LabelArea inner) {
    Optional<List<TypeLine>> lines = stack.set(slot, label.title(), parts, inner, false);
    if (lines.isEmpty()) {
      refuse("label-does-not-fit", label);
    }
    return lines.map(LabelFace::of);
  }

  private LabelArea inner(LabelArea area) {
    return area.inset(sheet.label().edgeMm());
  }

  private List<Part> at(List<String> forms) {
    return said("label.at", forms, false);
  }

  private List<Part> to(List<String> forms) {
    return said("label.to", forms, false);
  }

  private List<Part> said(String key, List<String> forms, boolean optional) {
    return forms.isEmpty()
        ? List.of()
        : List.of(
            new Part.Text(
                forms.stream().map(f -> wording.say(Phrase.of(key, "end", f))).toList(),
                false,
                optional));
  }

  private void refuse(String finding, Label label) {
    String title = label.title();
    findings.add(
        Finding.of(Severity.ERROR, finding, label.at(), "label", title, "sheet", sheet.name())
            .found(title));
  }
}
