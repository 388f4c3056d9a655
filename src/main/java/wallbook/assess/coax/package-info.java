/**
 * What the coaxial cables of a job lose at the frequencies of each use: cable television, off-air
 * and satellite reception, networking over coax, cellular repeaters. In go the job and the
 * reference tables, out come assessments with source. The package knows nothing of files or
 * documents.
 */
package wallbook.assess.coax;
