/**
 * Copper conductors by gauge: takes an American wire gauge number, gives diameter, area and
 * resistance per length at a temperature, with the source of the constants. It knows nothing of
 * cables, runs or what the conductor carries.
 */
package wallbook.assess.conductor;
