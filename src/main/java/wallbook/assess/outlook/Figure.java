package wallbook.assess.outlook;

import wallbook.assess.Assessment;
import wallbook.wording.Phrase;

/**
 * A figure that says how far a way goes without deciding whether it does.
 *
 * @param name what it is, in words
 * @param basis the assessment it is the value of
 */
public record Figure(Phrase name, Assessment basis) {}
