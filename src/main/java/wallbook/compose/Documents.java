package wallbook.compose;

import java.util.List;
import wallbook.compose.asbuilt.AsBuiltComposer;
import wallbook.compose.disclosure.Part;
import wallbook.compose.guide.GuideComposer;
import wallbook.compose.labelmap.LabelMapComposer;
import wallbook.compose.manual.ManualComposer;
import wallbook.compose.rackcard.RackCardComposer;
import wallbook.compose.report.CheckReportComposer;
import wallbook.compose.security.AnnexComposer;
import wallbook.compose.signoff.SignOffComposer;
import wallbook.compose.trades.BuilderComposer;
import wallbook.compose.trades.ElectricalComposer;
import wallbook.compose.trades.EntranceComposer;
import wallbook.compose.trades.LandscapingComposer;
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
            Part.HOUSE,
            composition -> new RackCardComposer(composition).compose()),
        new DocumentPlan(
            "trades/landscaping.pdf",
            "trades/landscaping.md",
            "landscaping.title",
            Disclosure.OUTSIDE,
            Part.LANDSCAPING,
            composition -> new LandscapingComposer(composition, TABLES).compose()),
        new DocumentPlan(
            "trades/electrical.pdf",
            "trades/electrical.md",
            "electrical.title",
            Disclosure.OUTSIDE,
            Part.ELECTRICAL,
            composition -> new ElectricalComposer(composition).compose()),
        new DocumentPlan(
            "trades/service-entrance.pdf",
            "trades/service-entrance.md",
            "entrance.title",
            Disclosure.OUTSIDE,
            Part.ENTRANCE,
            composition -> new EntranceComposer(composition).compose()),
        new DocumentPlan(
            "trades/builder.pdf",
            "trades/builder.md",
            "builder.title",
            Disclosure.OUTSIDE,
            Part.BUILDER,
            composition -> new BuilderComposer(composition).compose()),
        new DocumentPlan(
            "security-annex.pdf",
            "security-annex.md",
            "annex.title",
            Disclosure.OWNER_ALONE,
            Part.HOUSE,
            composition -> new AnnexComposer(composition, TABLES).compose()),
        new DocumentPlan(
            "sign-off.pdf",
            "sign-off.md",
            "signoff.title",
            composition -> new SignOffComposer(composition).compose()),
        new DocumentPlan(
            "check-report.pdf",
            "check-report.md",
            "check-report.title",
            composition -> new CheckReportComposer(composition).compose()));
  }
}
