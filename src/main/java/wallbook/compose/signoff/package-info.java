/**
 * The sign-off sheet: what is still open, what was shown, a checklist reckoned from the record, and
 * lines to sign. Takes the composition, gives one view model.
 */
package wallbook.compose.signoff;
