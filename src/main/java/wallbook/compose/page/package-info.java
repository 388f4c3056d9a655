/**
 * The offline page: every room, cable, head, conduit and system of a job as cards that refer to one
 * another by anchors, and what is searched. Takes a composition and a reader, gives one plain view
 * model without the facts that the reader is not told. It knows nothing of HTML or templates.
 */
package wallbook.compose.page;
