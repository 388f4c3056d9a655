package wallbook.assess.outlook;

import wallbook.record.Run;
import wallbook.record.RunEnd;

/**
 * A run that a means may use at a target.
 *
 * @param end the end that is at the target
 */
record NearRun(Run run, RunEnd end) {}
