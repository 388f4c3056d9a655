/**
 * What stands on the labels of a job: on cables, plates, ports and conduits, with the text of their
 * codes, each in forms from the fullest to the shortest. It knows nothing of type sizes, of PDF and
 * of where a label lies on its sheet.
 */
package wallbook.compose.labels;
