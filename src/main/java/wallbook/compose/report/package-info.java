/**
 * The check report for the integrator: findings, grouped by what they stand in the way of. It knows
 * nothing of how findings come about or how the report is printed.
 */
package wallbook.compose.report;
