package wallbook.compose.trades;

import java.util.List;
import java.util.Optional;
import wallbook.compose.ContactView;

/**
 * What stands on every trade sheet.
 *
 * @param rules the authority and the adopted codes as the integrator states them, in a sentence
 * @param contacts whom to call
 */
public record TradeHead(
    Optional<String> address, Optional<String> rules, List<ContactView> contacts) {}
