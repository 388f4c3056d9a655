/**
 * What a reader is not told: takes a job and a reader, gives the job without the facts that the
 * table {@code disclosure} keeps from that reader. Whatever is composed from the job that comes out
 * can't show them. It knows nothing of documents.
 */
package wallbook.compose.disclosure;
