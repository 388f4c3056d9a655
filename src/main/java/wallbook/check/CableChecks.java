package wallbook.check;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Severity;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.record.Medium;
import wallbook.wording.Phrase;

/** Cable types that the record describes: the facts their medium asks for, and no others. */
final class CableChecks implements Check {
  @Override
  public boolean findsErrors() {
    return false;
  }

  @Override
  public void look(Job job, Findings findings) {
    job.record().cables().forEach(cable -> checkFacts(cable, findings));
  }

  private static void checkFacts(Cable cable, Findings findings) {
    Map<String, Optional<?>> facts =
        Map.of(
            "category", cable.category(),
            "pairs", cable.pairs(),
            "fibre_class", cable.fibreClass(),
            "fibres", cable.fibres(),
            "coax", cable.coax(),
            "gauge", cable.gauge(),
            "conductors", cable.conductors());
    List<String> missing =
        needed(cable.medium()).stream().filter(key -> facts.get(key).isEmpty()).toList();
    if (!missing.isEmpty()) {
      String keys = String.join(", ", missing);
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "cable-facts-missing",
                  cable.origin().position(),
                  "cable",
                  cable.name(),
                  "medium",
                  Words.of("medium", cable.medium()),
                  "keys",
                  keys)
              .expecting(Phrase.of("expected.key", "key", keys)));
    }
    Set<String> foreign =
        facts.keySet().stream()
            .filter(key -> facts.get(key).isPresent())
            .filter(key -> !allowed(cable.medium()).contains(key))
            .collect(Collectors.toSet());
    for (String key : foreign) {
      findings.add(
          Finding.of(
                  Severity.WARNING,
                  "cable-fact-of-another-medium",
                  cable.origin().position(key),
                  "cable",
                  cable.name(),
                  "medium",
                  Words.of("medium", cable.medium()),
                  "key",
                  key)
              .found(key));
    }
  }

  private static List<String> needed(Medium medium) {
    return switch (medium) {
      case BALANCED_PAIR -> List.of("category", "pairs");
      case FIBRE -> List.of("fibre_class", "fibres");
      case COAX -> List.of("coax");
      case SPEAKER, CONTROL, POWER -> List.of("gauge", "conductors");
    };
  }

  private static List<String> allowed(Medium medium) {
    List<String> allowed = new ArrayList<>(needed(medium));
    if (medium == Medium.BALANCED_PAIR) {
      allowed.addAll(List.of("gauge", "conductors"));
    } else if (medium == Medium.COAX) {
      allowed.add("gauge");
    } else if (medium == Medium.CONTROL) {
      allowed.add("pairs");
    }
    return allowed;
  }
}
