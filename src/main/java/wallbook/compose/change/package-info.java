/**
 * What changed from one record of a house to the next, and the notice of it for the homeowner. Two
 * records go in, changes by id and a view model come out. The package knows nothing of files.
 */
package wallbook.compose.change;
