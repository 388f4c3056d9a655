package wallbook.render.drawing;

/**
 * A label that wants a place.
 *
 * @param symbol the symbol it belongs to
 * @param widthMm size of the label
 * @param heightMm size of the label
 */
record LabelWish(Box symbol, double widthMm, double heightMm) {}
