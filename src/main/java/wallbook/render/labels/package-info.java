/**
 * Lays labels out on sheets and tapes and draws them as a tagged PDF; a {@link
 * wallbook.render.labels.LabelPrinter} is the way in. Labels in several forms and a sheet go in, a
 * finished file comes out, or findings for what can't be printed legibly. It knows nothing of the
 * record and of which sheet a user wants.
 */
package wallbook.render.labels;
