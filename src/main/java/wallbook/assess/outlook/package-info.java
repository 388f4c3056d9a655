/**
 * What each dark, unfinished, spare or underused thing could carry later, and the ways a house
 * offers to fulfil a wish. Takes the job and its assessments, gives prospects that each rest on one
 * assessment. It computes no limit of its own.
 */
package wallbook.assess.outlook;
