package wallbook.render;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** A manual of many pages with everything a document can hold, about an invented house. */
final class ManualSample {
  record View(List<Room> rooms, Plan plan) {}

  record Room(String name, List<Run> runs, Optional<String> remark) {}

  record Run(String label, String from, String to, String length, String state) {}

  record Plan(String name) {}

  static final FigureRenderer PLAN =
      drawing ->
          Optional.of(
              new Figure.Drawing(
                  () ->
                      """
                  <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 400 150">
                    <rect x="10" y="10" width="380" height="130" fill="none" stroke="#1c2326" stroke-width="2"/>
                    <path d="M150 10 V90 M150 120 V140 M270 10 V60" stroke="#1c2326" stroke-width="2" fill="none"/>
                    <g font-family="Noto Sans" font-size="9" fill="#1c2326">
                      <text x="60" y="75" font-weight="bold">Office</text>
                      <text x="190" y="75" font-style="italic">Hall ≤ 2 m²</text>
                      <text x="320" y="75" font-family="serif" text-anchor="middle">Den</text>
                    </g>
                    <circle cx="14" cy="60" r="5" fill="#0f4a5c"/>
                  </svg>
                  """,
                  "Plan of the ground floor: three rooms side by side",
                  new PlanPainting()));

  /** The plan as its SVG shows it, at the size that fills the width of a page. */
  private static final class PlanPainting implements Painting {
    @Override
    public double widthMm() {
      return 160;
    }

    @Override
    public double heightMm() {
      return 60;
    }

    @Override
    public void paintWith(Brush brush) {
      brush.ink(0.8, 0x1c2326, Brush.NONE);
      brush.path(true, 4, 4, 156, 4, 156, 56, 4, 56);
      brush.path(false, 60, 4, 60, 36);
      brush.path(false, 60, 48, 60, 56);
      brush.path(false, 108, 4, 108, 24);
      brush.words("Office", Face.BOLD, 10, 24, 30, 0);
      brush.words("Hall ≤ 2 m²", Face.ITALIC, 10, 76, 30, 0);
      brush.words("Den", Face.REGULAR, 10, 124, 30, 90);
      brush.ink(0, Brush.NONE, 0x0f4a5c);
      brush.oval(5.6, 24, 2, 2, 0);
    }
  }

  static final String TEMPLATE =
      """
      ---
      title: Owner’s manual
      reader: the owner of the house
      purpose: Where every cable runs, what works today and what each could carry later.
      cover: page
      contents: 2
      ---

      # Read this first

      Each wall plate carries a **label**. Look the label up in the tables of its room; *in italics*
      stands what to expect. The list of rooms starts with [${view.rooms[0].name}](#room-${anchor(view.rooms[0].name)}).

      <@block.warning>
      Before drilling into a wall, look at the plan and switch off the circuit. Mains wiring is work for a
      licensed electrician.
      </@block.warning>

      <@block.caution>
      Pull a cable by its pull string only, never by a connector. A bend below four times the diameter
      harms the cable.
      </@block.caution>

      <@block.note>
      Lengths are from end to end, slack included.
      </@block.note>

      1. Find the room.
      2. Find the plate by its place on the wall.
         - left to right
         - low to high
      3. Read across.

      <@block.figure view.plan>
      Ground floor, with the plates as dots.
      </@block.figure>

      # Rooms

      <#list view.rooms as room>
      ## ${room.name} {#room-${anchor(room.name)}}

      <#if room.remark??>
      ${room.remark}

      </#if>
      | Label | From | To | Length | State |
      | --- | --- | --- | ---: | --- |
      <#list room.runs as run>
      | **${run.label}** | ${run.from} | ${run.to} | ${run.length} | ${run.state} |
      </#list>

      </#list>
      # Sign-off {.new-page}

      <@block.form>
      - ☐ Walked through together
      - ☐ All labels read
      </@block.form>

      <div class="sign"></div>

      Owner, date
      """;

  private ManualSample() {}

  static View view(int rooms, int runsPerRoom) {
    List<Room> list = new ArrayList<>();
    for (int r = 1; r <= rooms; r++) {
      List<Run> runs = new ArrayList<>();
      for (int i = 1; i <= runsPerRoom; i++) {
        runs.add(
            new Run(
                "R%02d-%02d".formatted(r, i),
                "Wall plate %d, left of the window, 18 in above the floor".formatted(i),
                "Rack, panel %d, port %d".formatted(r, i),
                "%d ft".formatted(40 + 7 * i),
                i % 5 == 0 ? "dark, coiled in the wall" : "in service"));
      }
      Optional<String> remark =
          r % 2 == 0 ? Optional.empty() : Optional.of("Two plates stand behind furniture.");
      list.add(new Room("Room " + r, runs, remark));
    }
    return new View(list, new Plan("ground"));
  }
}
