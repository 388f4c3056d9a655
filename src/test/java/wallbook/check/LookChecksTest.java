package wallbook.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static wallbook.check.SmallHouse.house;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import wallbook.finding.Finding;

class LookChecksTest {
  private static final String JOB = "{id: small, title: Small job, revision: 1, look: {%s}}";

  private static SmallHouse with(String look) {
    return house().with("job", JOB.formatted(look));
  }

  /** The palest grey for text by WCAG 2.2, 1.4.3 is #767676 at 4.54 : 1; #777777 has 4.48 : 1. */
  @Test
  void anAccentCanBeReadOnWhite() {
    with("accent: ¶\"#777777\"").finds("accent-too-pale");
    with("accent: \"#767676\"").findsNo("accent-too-pale");
  }

  @Test
  void anAccentIsAColour() {
    Finding finding = with("accent: ¶0f4a5c").finds("not-a-colour");
    assertEquals(Optional.of("#0f4a5c"), finding.nearest());
    with("accent: \"#0f4a5c\"").findsNo("not-a-colour");
  }

  @Test
  void anAccentLostToACommentIsNoticed() {
    house()
        .with(
            "job",
            "id: small",
            "title: Small job",
            "revision: 1",
            "look:",
            "  footer: Words",
            "  accent:¶ #0f4a5c")
        .finds("not-a-colour");
  }

  @Test
  void aFooterFitsOneLine() {
    with("footer: ¶" + "x".repeat(111)).finds("footer-too-long");
    with("footer: " + "x".repeat(110)).findsNo("footer-too-long");
  }
}
