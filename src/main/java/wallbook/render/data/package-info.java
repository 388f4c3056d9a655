/**
 * Findings and assessments as data for other programs: JSON and SARIF. What goes in are the values
 * of the stages before, what comes out is text that is the same on every machine. It knows nothing
 * of files.
 */
package wallbook.render.data;
