/**
 * Low-voltage direct-current feeds: takes the control and power wire of a job, gives the voltage at
 * the far end, the largest load that keeps within the drop allowed, the longest run, and what a
 * class 2 source may give. It knows nothing of documents.
 */
package wallbook.assess.lowvoltage;
