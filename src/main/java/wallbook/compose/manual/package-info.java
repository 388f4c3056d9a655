/**
 * The homeowner's manual: from a composition to a view model in plain words, room by room, without
 * a computed figure that its reader has no use for. It knows nothing of templates or of other
 * documents.
 */
package wallbook.compose.manual;
