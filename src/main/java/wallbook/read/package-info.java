/**
 * From files to a job: YAML, sweeps in CSV and the built-in cable types become an immutable {@link
 * wallbook.record.Job}, or findings that say with file, line and column what must be mended. All
 * mistakes are reported at once. The package knows nothing of limits, computation or documents.
 */
package wallbook.read;
