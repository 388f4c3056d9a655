package wallbook.check;

import java.util.HashMap;
import java.util.Map;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.record.Run;

/** Cable types of the record that nothing uses, or that lack what their use asks for. */
final class CableGapChecks implements Check {
  @Override
  public boolean needsWholeRecord() {
    return true;
  }

  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    Map<String, Boolean> inConduit = new HashMap<>();
    for (Run run : job.runs()) {
      inConduit.merge(run.cable(), !run.conduits().isEmpty(), Boolean::logicalOr);
    }
    for (Cable cable : job.record().cables()) {
      if (!inConduit.containsKey(cable.id())) {
        add("cable-type-unused", cable, findings);
      } else if (inConduit.get(cable.id()) && cable.diameter().isEmpty()) {
        add("cable-without-diameter", cable, findings);
      }
    }
  }

  private static void add(String name, Cable cable, Findings findings) {
    findings.add(
        Finding.of(Severity.REMARK, name, cable.origin().position("id"), "cable", cable.name()));
  }
}
