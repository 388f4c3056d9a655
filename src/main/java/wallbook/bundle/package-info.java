/**
 * Stores a finished package: files come in as paths and bytes, a folder, a zip of it and a manifest
 * with checksums come out, whole or not at all. The package knows nothing of what the files say.
 */
package wallbook.bundle;
