/**
 * Loudspeaker lines: takes the zones and speaker wire of a job, gives the level lost on the way,
 * the load the amplifier sees, how long the line may be and how far a stub-out can be extended. It
 * knows nothing of documents.
 */
package wallbook.assess.speaker;
