package wallbook.render.drawing;

import java.util.List;

/**
 * What labels have to respect.
 *
 * @param sheet labels stay inside
 * @param solid boxes that neither labels nor leaders may touch: other text, symbols without a label
 * @param lines lines that no label may stand on and that leaders should seldom cross: walls,
 *     dimension lines
 */
record Surroundings(Box sheet, List<Box> solid, List<Seg> lines) {
  Surroundings {
    solid = List.copyOf(solid);
    lines = List.copyOf(lines);
  }
}
