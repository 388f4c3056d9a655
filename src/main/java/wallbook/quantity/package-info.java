/**
 * Value types of physical quantities, one type a quantity, one scale inside, exact factors between
 * units. Text with a unit comes in through {@link wallbook.quantity.QuantityParser}; what goes out
 * is a number in the unit the accessor names. The package knows nothing of records, tables,
 * documents or how a reader likes numbers printed.
 */
package wallbook.quantity;
