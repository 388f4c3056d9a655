/**
 * The upgrade guide: from a job, its assessments, outlook and wishes to texts in the reader's words
 * and units, with like cables told of together. Its view model knows nothing of how it is printed.
 */
package wallbook.compose.guide;
