package wallbook.assess.outlook;

import wallbook.assess.Assessments;
import wallbook.record.Job;

/** What is known of a house when a wish is asked for. */
record Known(Job job, Assessments assessments, Outlook outlook) {}
