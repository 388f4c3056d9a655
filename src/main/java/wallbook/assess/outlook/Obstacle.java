package wallbook.assess.outlook;

import java.util.Optional;
import wallbook.wording.Phrase;

/**
 * A cable or conduit that would be at hand for a wish but can't serve it.
 *
 * @param subject id of the run or conduit
 * @param reason why not, in words
 * @param standIn id of the run that stands in for it
 */
public record Obstacle(String subject, Phrase reason, Optional<String> standIn) {}
