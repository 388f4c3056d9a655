package wallbook.render.drawing;

import java.util.Optional;

/**
 * Where a label came to stand, and the line that leads to it from its symbol when it stands apart.
 */
record PlacedLabel(Box box, Optional<Seg> leader) {}
