/**
 * Where things are: takes the job's places, ties and plans, gives coordinates in the building, how
 * sure they are, and what the recorded lengths of runs must at least be. It knows nothing of what
 * the runs carry, nor of drawings.
 */
package wallbook.assess.location;
