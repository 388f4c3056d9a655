/**
 * The record of a finished job as immutable records with units in the types. The shape of the file
 * is the shape of these types: a component is a key, its {@link wallbook.record.Says} is its
 * description. The package knows nothing of how files are read, of limits or of documents.
 */
package wallbook.record;
