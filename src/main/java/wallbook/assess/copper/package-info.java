/**
 * Balanced pairs: takes the runs of four-pair cable with their tests, gives what each carries and
 * could carry: Ethernet, power, other uses, and how its tests stand against the published limits.
 * It knows nothing of documents, of other media, or of how the record was read.
 */
package wallbook.assess.copper;
