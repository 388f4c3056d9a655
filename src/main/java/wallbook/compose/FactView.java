package wallbook.compose;

/** A figure with its name, such as "Cables that wait for later use: 64". */
public record FactView(String name, String value) {}
