package wallbook.compose;

import java.util.List;
import wallbook.compose.guide.GuideComposer;
import wallbook.compose.labelmap.LabelMapComposer;
import wallbook.compose.manual.ManualComposer;
import wallbook.compose.report.CheckReportComposer;

/** The documents of a package, in the order they are listed to a reader. */
public final class Documents {
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
            "check-report.pdf",
            "check-report.md",
            "check-report.title",
            composition -> new CheckReportComposer(composition).compose()));
  }
}
