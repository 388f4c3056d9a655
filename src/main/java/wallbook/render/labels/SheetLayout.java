package wallbook.render.labels;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import wallbook.compose.labels.CableWrap;
import wallbook.compose.labels.Label;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.quantity.Length;
import wallbook.render.Fonts;
import wallbook.stock.LabelArea;
import wallbook.stock.LabelSheet;
import wallbook.stock.Legibility;
import wallbook.wording.Wording;

/** Lays an order of labels out on pages. */
final class SheetLayout {
  private final Typesetter type;
  private final Legibility legibility;
  private final CodeFitter codes;
  private final Wording wording;
  private final Findings findings;

  /**
   * @param findings takes what can't be printed legibly, and cables that a wrap doesn't suit
   */
  SheetLayout(Fonts fonts, Legibility legibility, Wording wording, Findings findings) {
    this.type = new Typesetter(fonts);
    this.legibility = legibility;
    this.codes = new CodeFitter(legibility);
    this.wording = wording;
    this.findings = findings;
  }

  /** The pages with all labels that fit; what doesn't is found fault with. */
  List<SheetPage> lay(LabelOrder order) {
    LabelSheet sheet = order.sheet();
    HouseSizes house = new HouseSizes();
    FaceLayout trial = faces(sheet, house, new Findings());
    order.labels().forEach(trial::lay);
    house.settle();
    FaceLayout faces = faces(sheet, house, findings);
    checkGirths(order);
    List<SheetPage> pages = new ArrayList<>();
    List<SheetPage.Placed> page = new ArrayList<>();
    int position = order.start();
    for (Label label : order.labels()) {
      Optional<LabelFace> face = faces.lay(label);
      if (face.isEmpty()) {
        continue;
      }
      if (position > sheet.labels()) {
        pages.add(new SheetPage(page));
        page = new ArrayList<>();
        position = 1;
      }
      LabelArea area = sheet.area(position++);
      page.add(new SheetPage.Placed(label, area, face.get().moved(area.xMm(), area.yMm())));
    }
    if (!page.isEmpty()) {
      pages.add(new SheetPage(page));
    }
    return pages;
  }

  private FaceLayout faces(LabelSheet sheet, HouseSizes house, Findings into) {
    return new FaceLayout(sheet, wording, new Stack(type, legibility, house), codes, into);
  }

  /** Says once for each type of cable that the wraps of the sheet are too short or long for it. */
  private void checkGirths(LabelOrder order) {
    if (order.sheet().girth().isEmpty()) {
      return;
    }
    LabelSheet.Girth girth = order.sheet().girth().get();
    Map<String, CableWrap> unsuited = new TreeMap<>();
    for (Label label : order.labels()) {
      if (label instanceof CableWrap wrap
          && wrap.diameter().filter(d -> !girth.suits(d.inMillimetres())).isPresent()) {
        unsuited.putIfAbsent(wrap.cable(), wrap);
      }
    }
    for (CableWrap wrap : unsuited.values()) {
      findings.add(
          Finding.of(
              Severity.WARNING,
              "wrap-does-not-suit-cable",
              wrap.at(),
              "cable",
              wrap.cable(),
              "diameter",
              dimension(wrap.diameter().orElseThrow().inMillimetres()),
              "sheet",
              order.sheet().name(),
              "least",
              dimension(girth.leastMm()),
              "greatest",
              dimension(girth.greatestMm())));
    }
  }

  private String dimension(double mm) {
    return wording.quantities().dimension(Length.millimetres(mm));
  }
}
