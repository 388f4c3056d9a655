package wallbook.assess.conduit;

import java.util.List;
import wallbook.assess.Assessment;
import wallbook.record.Job;

/** One family of questions about a conduit. */
interface Questions {
  List<Assessment> about(ConduitCase conduit, Job job);
}
