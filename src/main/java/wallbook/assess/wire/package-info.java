/**
 * What speaker, control and power wire have in common: takes a run of the record, gives the
 * resistance of its conductors at the temperature it will have, with what was assumed and what the
 * record lacks. It knows nothing of what the wire feeds.
 */
package wallbook.assess.wire;
