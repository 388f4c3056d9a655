/**
 * Drawings that several documents share, made from the job: a panel port by port, the house in one
 * line, a conduit cut across, a sweep beside its limit. Takes a job and a reader's words, gives
 * drawings to be laid out; it knows nothing of the documents they stand in.
 */
package wallbook.compose.figure;
