/**
 * Photographs and logos beside the record, and the colours of documents. Goes in: a file of
 * somebody else's. Comes out: an upright picture of moderate size that holds its pixels and nothing
 * more, or the reason why there is none. It knows nothing of the record, of findings or of
 * documents.
 */
package wallbook.picture;
