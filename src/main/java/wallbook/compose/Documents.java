package wallbook.compose;

import java.util.List;
import wallbook.compose.asbuilt.AsBuiltComposer;
import wallbook.compose.guide.GuideComposer;
import wallbook.compose.labelmap.LabelMapComposer;
import wallbook.compose.manual.ManualComposer;
import wallbook.compose.rackcard.RackCardComposer;
import wallbook.compose.report.CheckReportComposer;
import wallbook.reference.Tables;

/** The documents of a package, in the order they are listed to a reader. */
public final class Documents {
  private static final Tables TABLES = new Tables();

  private Documents() {}

  /** All documents that a package holds. */
  public static List<DocumentPlan> all() {
    return List.of(
        new DocumentPlan(
            "homeowner-manual.pdf",
            "homeowner-manual.md",
            "manual.title",
            composition -> new ManualComposer(composition).compose()),
        new DocumentPlan(
            "label-map.pdf",
            "label-map.md",
            "labelmap.title",
            composition -> new LabelMapComposer(composition).compose()),
        new DocumentPlan(
            "upgrade-guide.pdf",
            "upgrade-guide.md",
            "guide.title",
            composition -> new GuideComposer(composition).compose()),
        new DocumentPlan(
            "technician-as-built.pdf",
            "technician-as-built.md",
            "asbuilt.title",
            composition -> new AsBuiltComposer(composition, TABLES).compose()),
        new DocumentPlan(
            "rack-door-card.pdf",
            "rack-door-card.md",
            "rackcard.title",
            Disclosure.OUTSIDE,
            composition -> new RackCardComposer(composition).compose()),
        new DocumentPlan(
            "check-report.pdf",
            "check-report.md",
            "check-report.title",
            composition -> new CheckReportComposer(composition).compose()));
  }
}
