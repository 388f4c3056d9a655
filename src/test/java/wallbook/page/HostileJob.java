package wallbook.page;

import wallbook.Jobs;
import wallbook.compose.disclosure.Recipient;
import wallbook.record.Job;

/** A job whose every text tries to be more than text. */
final class HostileJob {
  /** Ends a script, a style, an attribute, a comment and a title, and begins others. */
  static final String TEXT =
      "</script></style></title>--><script>window.hostile=1</script>"
          + "\"'><img src=x onerror=window.hostile=2>"
          + "<!--<script>${1+1}&lt;b&gt;]]> javascript:alert(1) \\u003c {count}";

  private HostileJob() {}

  static Job job() {
    String text = "'" + TEXT.replace("'", "''") + "'";
    String record =
        """
        format: 1
        job:
          id: hostile
          title: TEXT
          address: TEXT
          revision: 1
          invented: yes
          jurisdiction: TEXT
          codes: [TEXT]
          parties:
            - {role: integrator, name: TEXT, phone: TEXT, email: TEXT}
        floors:
          - {id: ground, name: TEXT, level: 0, elevation: 0 ft}
        spaces:
          - id: den
            name: TEXT
            floor: ground
            kind: living
            ceiling_height: 9 ft
            outline: [[0 ft, 0 ft], [0 ft, 12 ft], [14 ft, 12 ft], [14 ft, 0 ft]]
            note: TEXT
          - id: nook
            name: TEXT
            floor: ground
            kind: living
            outline: [[14 ft, 0 ft], [14 ft, 12 ft], [20 ft, 12 ft], [20 ft, 0 ft]]
        heads:
          - id: rack
            name: TEXT
            kind: rack
            space: den
            wall: A
            offset: 2 ft
            note: TEXT
            panels:
              - {id: P1, name: TEXT, kind: patch_panel, ports: 4, note: TEXT}
        places:
          - {id: a, label: TEXT, name: TEXT, space: den, kind: wall_plate, use: data, wall: B,
             offset: 6 ft, height: 18 in, note: TEXT}
        cables:
          - {id: odd, name: TEXT, medium: balanced_pair, category: cat6, pairs: 4}
        runs:
          - id: r1
            label: TEXT
            cable: odd
            from: {head: rack, panel: P1, port: 1, finish: terminated}
            to: {place: a, jack: TEXT, finish: coiled}
            length: 40 ft
            condition: dark
            dark_reason: TEXT
            system: net
            serves: TEXT
            note: TEXT
        conduits:
          - id: c1
            label: TEXT C
            name: TEXT
            type: ent
            trade_size: "1"
            from: {head: rack}
            to: {place: a}
            contents: [r1]
            pull_string: none
            condition: unknown
            purpose: TEXT
            firestop: TEXT
            note: TEXT
        tests:
          - {id: t1, run: r1, date: 2026-04-20, kind: wire_map, result: fail, reason: TEXT,
             instrument: TEXT, by: TEXT}
        systems:
          - {id: net, name: TEXT, kind: data_network, works: TEXT, later: TEXT, note: TEXT}
        exceptions:
          - {id: x1, kind: damaged_not_replaced, what: TEXT, run: r1, stands_in: TEXT}
        """
            .replace("TEXT C", text.substring(0, text.length() - 1) + " C'")
            .replace("TEXT", text);
    return Jobs.read(record).job().orElseThrow();
  }

  static String html() {
    Job job = job();
    return SamplePage.html(
        job, SamplePage.view(job, Recipient.PAGE, SamplePage.ENGLISH), SamplePage.ENGLISH);
  }
}
