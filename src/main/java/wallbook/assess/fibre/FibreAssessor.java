package wallbook.assess.fibre;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wallbook.assess.Assessment;
import wallbook.record.FibreClass;
import wallbook.record.Job;
import wallbook.reference.Tables;

/**
 * Assesses every fibre run of a job: in service, dark, damaged and abandoned. Topics:
 *
 * <ul>
 *   <li>{@code fibre.application.<name>}: every IEEE 802.3 optical application of the tables
 *   <li>{@code fibre.budget.<nm>.<edition>}, {@code fibre.expected.<nm>}: loss that is allowed and
 *       loss that is usual
 *   <li>{@code fibre.tested}, {@code fibre.test.<nm>}: whether it may be called tested, and the
 *       worst reading against the budget
 *   <li>{@code fibre.pon.<class>}: share of a provider's path loss, for single-mode
 *   <li>{@code fibre.join.<class>}: joining to another class of fibre
 *   <li>{@code fibre.otdr.<nm>}, {@code fibre.bend.at-rest}, {@code fibre.bend.under-load}
 * </ul>
 *
 * <p>A fibre that is not terminated is assessed as it would be once it is, and never better than
 * conditionally. A damaged or abandoned one carries nothing and is only given its round-trip time.
 */
public final class FibreAssessor {
  private final FibreLinks links;
  private final List<OpticalApplication> applications;
  private final ApplicationJudge applicationJudge;
  private final BudgetReport budgets;
  private final LossTestJudge lossTests;
  private final TestedJudge tested;
  private final PassiveNetworkJudge passiveNetworks;
  private final JoinJudge joins;
  private final BendJudge bends;

  public FibreAssessor(Tables tables) {
    LinkLosses losses = new LinkLosses(tables);
    links = new FibreLinks(tables);
    applications = new OpticalApplications(tables).all();
    applicationJudge = new ApplicationJudge(tables, losses, links.usualCords());
    budgets = new BudgetReport(tables);
    lossTests = new LossTestJudge(tables, losses);
    tested = new TestedJudge(tables, losses);
    passiveNetworks = new PassiveNetworkJudge(tables, losses);
    joins = new JoinJudge(tables);
    bends = new BendJudge(tables);
  }

  /** Assessments of all fibre runs, in the record's order of runs. */
  public List<Assessment> assess(Job job) {
    List<FibreLink> all = links.of(job);
    Map<String, Set<FibreClass>> classesAtHeads = JoinJudge.classesAtHeads(all);
    List<Assessment> assessments = new ArrayList<>();
    for (FibreLink link : all) {
      applications.forEach(a -> assessments.add(applicationJudge.judge(link, a)));
      assessments.addAll(passiveNetworks.of(link));
      assessments.addAll(budgets.roundTrips(link));
      if (link.outOfUse().isEmpty()) {
        assessments.addAll(budgets.of(link));
        tested.judge(link, job.testsOf(link.run())).ifPresent(assessments::add);
        assessments.addAll(lossTests.of(link));
        assessments.addAll(joins.of(link, classesAtHeads));
        assessments.addAll(bends.of(job, link.run()));
      }
    }
    return assessments;
  }
}
