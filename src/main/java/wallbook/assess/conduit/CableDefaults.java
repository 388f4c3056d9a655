package wallbook.assess.conduit;

import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import wallbook.record.Cable;
import wallbook.record.Job;
import wallbook.reference.Source;
import wallbook.reference.Table;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;

/** Says where a cable's dimensions are those of its generic type and not of the cable itself. */
final class CableDefaults {
  private static final String CITATION = "usual dimensions of generic cables";

  private final Table catalogue;

  CableDefaults(Tables tables) {
    this.catalogue = tables.table("cable-catalogue");
  }

  /** Names the cable types whose dimensions are generic; empty if there are none. */
  Optional<Phrase> assumption(Job job, Collection<Cable> cables) {
    String names = generic(job, cables).stream().map(Cable::name).collect(Collectors.joining("; "));
    return names.isEmpty()
        ? Optional.empty()
        : Optional.of(Phrase.of("conduit.assume.generic", "cables", names));
  }

  /** A source joined by that of the generic dimensions, where any are used. */
  Source source(Source rule, Job job, Collection<Cable> cables) {
    Source joined = rule;
    for (Cable cable : generic(job, cables)) {
      joined = joined.and(new Source(CITATION, catalogue.row(cable.id()).source().standing()));
    }
    return joined;
  }

  private List<Cable> generic(Job job, Collection<Cable> cables) {
    Map<String, Cable> generic = new LinkedHashMap<>();
    cables.forEach(cable -> generic.put(cable.id(), cable));
    job.record().cables().forEach(own -> generic.remove(own.id()));
    return List.copyOf(generic.values());
  }
}
