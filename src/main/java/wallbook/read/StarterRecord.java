package wallbook.read;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import wallbook.record.Id;
import wallbook.record.PrintUnits;
import wallbook.record.SpaceKind;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** A record to begin with: rooms, and comments that say what comes next. */
public final class StarterRecord {
  private final Wording wording;
  private final Set<String> ids = new HashSet<>();

  private StarterRecord(Wording wording) {
    this.wording = wording;
  }

  /**
   * The text of the record.
   *
   * @param job id of the job; made to have the form of one
   * @param rooms names of the rooms as printed, in the order they are walked
   * @param wording words of the comments
   */
  public static String text(String job, List<String> rooms, PrintUnits units, Wording wording) {
    return new StarterRecord(wording).whole(job, rooms, units);
  }

  private String whole(String job, List<String> rooms, PrintUnits units) {
    String id = id(job);
    List<String> lines = new ArrayList<>();
    comment(lines, "", "starter.head");
    lines.add("format: " + JobReader.FORMAT);
    lines.add("");
    comment(lines, "", "starter.job");
    lines.add("job:");
    lines.add("  id: " + id);
    lines.add("  title: " + YamlText.plainOrQuoted(job.strip()));
    lines.add("  revision: 1");
    lines.add("  units: " + units.word());
    lines.add("  language: " + wording.locale().toLanguageTag());
    comment(lines, "  ", "starter.parties");
    lines.add("");
    String floor = id(wording.say("starter.floor"));
    lines.add("floors:");
    lines.add(
        "  - {id: "
            + floor
            + ", name: "
            + YamlText.plainOrQuoted(wording.say("starter.floor"))
            + ", level: 0, elevation: 0 "
            + (units == PrintUnits.METRIC ? "m" : "ft")
            + "}");
    lines.add("");
    comment(lines, "", "starter.spaces");
    lines.add("spaces:");
    for (String room : rooms) {
      lines.add("  - id: " + id(room));
      lines.add("    name: " + YamlText.plainOrQuoted(room));
      lines.add("    floor: " + floor);
      lines.add("    kind: " + kind(room).word());
    }
    lines.add("");
    comment(lines, "", "starter.next");
    return String.join("\n", lines) + "\n";
  }

  private void comment(List<String> lines, String indent, String key) {
    wording
        .say(Phrase.of(key))
        .lines()
        .forEach(line -> lines.add((indent + "# " + line).stripTrailing()));
  }

  /** An id made of a name, unlike all before it. */
  private String id(String name) {
    String plain = name.toLowerCase(Locale.ROOT).replaceAll("[^a-z0-9]+", "-");
    plain = plain.replaceAll("^-|-$", "");
    plain = plain.isEmpty() ? "x" : plain.substring(0, Math.min(plain.length(), Id.LONGEST - 5));
    String id = plain.matches(Id.FORM) ? plain : "x-" + plain;
    for (int i = 2; !ids.add(id); i++) {
      id = plain + "-" + i;
    }
    return id;
  }

  /** The kind whose word the name holds, the longest before others. */
  private static SpaceKind kind(String room) {
    String name = room.toLowerCase(Locale.ROOT);
    return Arrays.stream(SpaceKind.values())
        .filter(kind -> name.contains(kind.word().replace('_', ' ')))
        .max(Comparator.comparingInt(kind -> kind.word().length()))
        .orElse(SpaceKind.OTHER_ROOM);
  }
}
