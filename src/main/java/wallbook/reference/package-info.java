/**
 * Published limits and generic data as tables: one table a file, its source and standing in the
 * head, checked when read. A table is asked for by name and a row by its key; out come numbers in
 * the unit that the column's name says. The package knows nothing of what is computed with them.
 */
package wallbook.reference;
