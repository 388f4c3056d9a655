package wallbook.read;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import wallbook.Jobs;

class ScheduleWriterTest {
  private static final String HOUSE =
      """
      floors: [{id: ground, name: "=1+1", level: -1, elevation: 0 m}]
      spaces:
        - id: hall
          name: 'Hall, with a "niche"'
          floor: ground
          kind: hall
          outline: [[0 ft, 0 ft], [0 ft, 9 ft], [9 ft, 9 ft], [9 ft, 0 ft]]
      heads:
        - {id: rack, name: Rack, kind: rack, space: hall, panels: [{id: P1, name: Panel, kind: patch_panel, ports: 24}]}
      """;

  /** RFC 4180, section 2: lines end with CRLF, quotes within a quoted field are doubled. */
  @Test
  void aRowIsWrittenAsTheStandardSays() {
    String text = schedule("spaces");

    assertTrue(text.endsWith("\r\n"), text);
    assertEquals(0, text.replace("\r\n", "").chars().filter(c -> c == '\n').count());
    assertTrue(text.contains("hall,\"Hall, with a \"\"niche\"\"\",ground,hall,"), text);
  }

  /** Common practice against formula injection (OWASP, "CSV Injection"): a leading apostrophe. */
  @Test
  void aTextThatASpreadsheetWouldComputeGetsAnApostropheAndANumberNone() {
    assertEquals("id,name,level,elevation\r\nground,'=1+1,-1,0 ft\r\n", schedule("floors"));
  }

  @Test
  void thingsWithinAThingTakeNumberedColumns() {
    assertTrue(schedule("heads").lines().findFirst().orElseThrow().contains(",panels.1.ports,"));
  }

  @Test
  void pointsOfAnOutlineShareACell() {
    assertTrue(
        schedule("spaces").contains("\"[0 ft, 0 ft]; [0 ft, 9 ft]; [9 ft, 9 ft]; [9 ft, 0 ft]\""));
  }

  @Test
  void anItemOfAListMayHoldTheSeparator() {
    List<String> items = List.of("a; b", "say \"x\"", " c ", "d");

    assertEquals("\"a; b\"; \"say \"\"x\"\"\"; \" c \"; d", ListCell.join(items));
    assertEquals(List.of("a; b", "say \"x\"", "c", "d"), ListCell.split(ListCell.join(items)));
  }

  private static String schedule(String list) {
    return ScheduleWriter.all(Jobs.job(HOUSE).record()).stream()
        .filter(s -> s.list().equals(list))
        .findFirst()
        .orElseThrow()
        .text();
  }
}
