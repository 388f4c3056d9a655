/**
 * What is said to readers, apart from how: phrases by key, and a wording that says them in one
 * language and one system of units. Words come in as a map of keys to text; text comes out. The
 * package knows nothing of the record, of documents or of where words files lie.
 */
package wallbook.wording;
