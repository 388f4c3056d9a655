/**
 * The record against what is usual at each kind of place. Takes the job and a table of custom,
 * gives assessments for information only: less than usual is a remark for an upgrade, never a
 * fault.
 */
package wallbook.assess.practice;
