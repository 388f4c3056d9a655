/**
 * The label map: plans, wall elevations and panels as drawings, with every label and its other end
 * beside them. It knows nothing of templates or of how a drawing is drawn.
 */
package wallbook.compose.labelmap;
