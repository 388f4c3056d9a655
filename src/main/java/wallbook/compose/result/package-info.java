/**
 * Computed results as a reader sees them: assessments in words, with the number of their source,
 * and the sources to be listed at the end of a document. Every document that states what something
 * can carry takes its statements from here; none is worded without its assessment.
 */
package wallbook.compose.result;
