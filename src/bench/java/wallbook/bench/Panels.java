package wallbook.bench;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/** The panels in the rack of one storey, filled from the first port. */
final class Panels {
  private static final int TOP_UNIT = 44;

  /** A port given out. */
  record Port(String panel, int number) {}

  private final Map<String, Integer> used = new LinkedHashMap<>();

  /** The next free port of a row of panels. */
  Port next(String letters) {
    int before = used.merge(letters, 1, Integer::sum) - 1;
    int size = ports(letters);
    return new Port(name(letters, before / size), before % size + 1);
  }

  /** The panels as the record writes them. */
  List<String> lines() {
    List<String> lines = new ArrayList<>();
    int unit = TOP_UNIT;
    for (Map.Entry<String, Integer> row : used.entrySet()) {
      int size = ports(row.getKey());
      for (int i = 0; i * size < row.getValue(); i++) {
        lines.add(
            "      - {id: %s, name: Panel %s, kind: %s, ports: %d, columns: %d, rack_unit: %d}"
                .formatted(
                    name(row.getKey(), i),
                    name(row.getKey(), i),
                    kind(row.getKey()),
                    size,
                    size / 2,
                    unit));
        unit -= 2;
      }
    }
    return lines;
  }

  private static String name(String letters, int index) {
    return letters + "-" + (index + 1);
  }

  private static int ports(String letters) {
    return letters.equals("P") || letters.equals("B") ? 48 : 24;
  }

  private static String kind(String letters) {
    return switch (letters) {
      case "P" -> "patch_panel";
      case "CX" -> "coax_panel";
      case "F1", "F2" -> "fibre_tray";
      case "B" -> "binding_posts";
      default -> "terminal_strip";
    };
  }
}
