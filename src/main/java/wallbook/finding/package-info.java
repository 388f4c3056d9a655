/**
 * Findings: what is wrong or worth knowing about a record, as values with severity, stable name,
 * position and remedy. Stages collect them and hand them on. The package knows nothing of who makes
 * them or how they are printed.
 */
package wallbook.finding;
