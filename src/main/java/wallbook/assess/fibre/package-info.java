/**
 * What the optical fibres of a job can carry: loss budgets, applications, passive optical networks,
 * test results, joints between fibres and handling. In go the job and the reference tables, out
 * come assessments with margin and source. The package knows nothing of files or documents.
 */
package wallbook.assess.fibre;
