/**
 * Plane geometry of the record's plans: outlines of spaces, their lettered walls, points on them.
 * Goes in: points and lengths of the record. It knows nothing of limits, findings or drawings.
 */
package wallbook.geometry;
