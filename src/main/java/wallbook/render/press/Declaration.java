package wallbook.render.press;

/**
 * One property set to one value.
 *
 * @param value of the type that the property has; {@link #INHERIT} takes that of the element around
 */
record Declaration(Property property, Object value) {
  static final Object INHERIT = "inherit";
}
