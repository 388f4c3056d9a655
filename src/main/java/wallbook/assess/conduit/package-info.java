/**
 * Conduits: takes the job's conduits with what lies in them and the tables of bores, fill, bends
 * and pulling; gives what each can still take, how it may be pulled and what fails first. It knows
 * nothing of the signals the cables carry.
 */
package wallbook.assess.conduit;
