package wallbook.check;

import java.util.Optional;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.picture.Colour;
import wallbook.quantity.Factor;
import wallbook.record.Job;
import wallbook.record.Look;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** The integrator's own look: a colour that is one and can be read, a foot that fits. */
final class LookChecks implements Check {
  private final double leastContrast;
  private final int longestFooter;

  LookChecks(Tables tables, CheckFigures figures) {
    this.leastContrast = tables.table("document-look").row("accent-contrast").number("ratio");
    this.longestFooter = figures.count("longest-footer");
  }

  @Override
  public void look(Job job, Findings findings) {
    job.facts().look().ifPresent(look -> look(look, findings));
  }

  private void look(Look look, Findings findings) {
    SourcePosition at = look.origin().position("accent");
    look.accent().ifPresent(accent -> checkAccent(accent, at, findings));
    if (look.accent().isEmpty() && !at.equals(look.origin().position())) {
      noColour("", at, findings); // unquoted, what follows # is a comment
    }
    look.footer()
        .filter(footer -> footer.length() > longestFooter)
        .ifPresent(
            footer ->
                findings.add(
                    Finding.of(
                            Severity.WARNING, "footer-too-long", look.origin().position("footer"))
                        .found(Integer.toString(footer.length()))
                        .expecting(Phrase.of("expected.text-length", "longest", longestFooter))));
  }

  private static void noColour(String found, SourcePosition at, Findings findings) {
    findings.add(
        Finding.of(Severity.ERROR, "not-a-colour", at, "found", found)
            .found(found)
            .expecting(Phrase.of("expected.colour"))
            .nearest(Optional.of("#" + found).filter(c -> Colour.parse(c).isPresent())));
  }

  private void checkAccent(String accent, SourcePosition at, Findings findings) {
    Optional<Colour> colour = Colour.parse(accent);
    if (colour.isEmpty()) {
      noColour(accent, at, findings);
      return;
    }
    double contrast = colour.get().contrast(Colour.WHITE);
    if (contrast < leastContrast) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "accent-too-pale",
                  at,
                  "accent",
                  accent,
                  "contrast",
                  Factor.of(contrast),
                  "least",
                  Factor.of(leastContrast))
              .found(accent)
              .expecting(Phrase.of("expected.contrast", "least", Factor.of(leastContrast))));
    }
  }
}
