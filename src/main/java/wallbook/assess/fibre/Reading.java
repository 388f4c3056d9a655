package wallbook.assess.fibre;

import wallbook.record.LossReading;
import wallbook.record.RunTest;

/** One optical loss read in a test of a link. */
record Reading(RunTest test, LossReading loss) {}
