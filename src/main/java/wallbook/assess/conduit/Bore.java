package wallbook.assess.conduit;

import wallbook.quantity.Diameter;
import wallbook.reference.Source;

/**
 * Inside diameter of a conduit and how it is known.
 *
 * @param declared whether the record gives it, measured or by the maker's declaration; otherwise it
 *     is a table's figure for family and trade size
 */
record Bore(Diameter diameter, boolean declared, Source source) {}
