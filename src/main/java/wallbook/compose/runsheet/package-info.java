/**
 * A technician's view of one run: everything known and computed, from the job, its assessments and
 * outlook, as texts in the reader's words and units. It knows nothing of where it is shown.
 */
package wallbook.compose.runsheet;
