/**
 * The stock that labels are printed on, sheets and tapes, and what keeps a label legible. Rows of
 * tables go in, checked geometries come out. It knows nothing of jobs and of drawing.
 */
package wallbook.stock;
