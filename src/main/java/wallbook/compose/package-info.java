/**
 * From a job, its findings and assessments to one plain view model per document and reader: texts
 * in the reader's language and units, in the order they will stand. One package beneath for each
 * document. It knows nothing of HTML, PDF or templates.
 */
package wallbook.compose;
