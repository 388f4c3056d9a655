package wallbook.assess.conduit;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import wallbook.quantity.Diameter;
import wallbook.record.Cable;
import wallbook.record.Conduit;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.Phrase;

/**
 * One conduit with what lies in it and how clear it is: what every question about it starts from.
 */
record ConduitCase(
    Conduit conduit,
    Optional<Bore> bore,
    List<PullSection> sections,
    List<Content> contents,
    Clearance clearance) {

  /** A run in the conduit and its cable type. */
  record Content(Run run, Cable cable) {}

  ConduitCase {
    sections = List.copyOf(sections);
    contents = List.copyOf(contents);
  }

  /** The conduit's runs are those it lists and those that say they pass through it. */
  static ConduitCase of(Job job, Conduit conduit, Bores bores) {
    Set<String> runs = new LinkedHashSet<>(conduit.contents());
    job.runsThrough(conduit).forEach(run -> runs.add(run.id()));
    List<Content> contents =
        runs.stream().map(job::run).map(run -> new Content(run, job.cableOf(run))).toList();
    return new ConduitCase(
        conduit,
        bores.of(conduit),
        PullSection.of(conduit.path()),
        contents,
        Clearance.of(conduit));
  }

  String id() {
    return conduit.id();
  }

  List<Cable> cables() {
    return contents.stream().map(Content::cable).toList();
  }

  /** Outer diameters of what lies in it, as far as they are known. */
  List<Diameter> diameters() {
    return contents.stream().flatMap(content -> diameter(content.cable()).stream()).toList();
  }

  /** Outer diameter of a cable, where it is known. */
  static Optional<Diameter> diameter(Cable cable) {
    return cable.diameter().filter(length -> length.inMetres() > 0).map(Diameter::of);
  }

  /** What the record lacks to know the bore and how much of it is taken. */
  List<Phrase> missingForFill() {
    List<Phrase> missing = new ArrayList<>();
    if (bore.isEmpty()) {
      missing.add(Phrase.of("conduit.missing.bore", "size", conduit.tradeSize()));
    }
    for (Content content : contents) {
      if (diameter(content.cable()).isEmpty()) {
        missing.add(missingDiameter(content.cable()));
      }
    }
    return missing.stream().distinct().toList();
  }

  static Phrase missingDiameter(Cable cable) {
    return Phrase.of("conduit.missing.diameter", "cable", cable.name());
  }

  /** What the record lacks to know the bends; empty if it has them. */
  List<Phrase> missingBends() {
    return sections.isEmpty() ? List.of(Phrase.of("conduit.missing.bends")) : List.of();
  }
}
