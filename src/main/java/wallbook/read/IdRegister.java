package wallbook.read;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import wallbook.finding.Finding;
import wallbook.finding.Findings;
import wallbook.finding.Nearest;
import wallbook.finding.Severity;
import wallbook.finding.SourcePosition;
import wallbook.record.Kind;
import wallbook.wording.Phrase;

/** Collects ids and references while a record is bound, and afterwards says which do not fit. */
final class IdRegister {
  private record Owner(Kind kind, SourcePosition position) {}

  private record Reference(Kind kind, String id, SourcePosition position) {}

  private final Map<String, Owner> owners = new HashMap<>();
  private final Map<Kind, Set<String>> idsOfKind = new EnumMap<>(Kind.class);
  private final List<Reference> references = new ArrayList<>();
  private final Findings findings;

  IdRegister(Findings findings) {
    this.findings = findings;
  }

  /** Notes an id that exists without standing in the record, such as a catalogue cable. */
  void provide(Kind kind, String id) {
    idsOfKind.computeIfAbsent(kind, k -> new HashSet<>()).add(id);
  }

  void declare(Kind kind, String id, SourcePosition position) {
    Owner first = owners.putIfAbsent(id, new Owner(kind, position));
    if (first != null) {
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "duplicate-id",
                  position,
                  "id",
                  id,
                  "line",
                  first.position().line(),
                  "kind",
                  Phrase.of("kind." + first.kind().word()))
              .found(id));
    }
    provide(kind, id);
  }

  void refer(Kind kind, String id, SourcePosition position) {
    references.add(new Reference(kind, id, position));
  }

  /** Reports every reference to an id that nothing of its kind has. */
  void reportUnresolved() {
    for (Reference reference : references) {
      Set<String> known = idsOfKind.getOrDefault(reference.kind(), Set.of());
      if (known.contains(reference.id())) {
        continue;
      }
      Phrase kind = Phrase.of("kind." + reference.kind().word());
      findings.add(
          Finding.of(
                  Severity.ERROR,
                  "unknown-id",
                  reference.position(),
                  "id",
                  reference.id(),
                  "kind",
                  kind)
              .found(reference.id())
              .expecting(Phrase.of("expected.id", "kind", kind))
              .nearest(Nearest.to(reference.id(), known)));
    }
  }
}
