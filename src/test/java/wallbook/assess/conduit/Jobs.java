package wallbook.assess.conduit;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import wallbook.finding.SourcePosition;
import wallbook.quantity.Angle;
import wallbook.quantity.Diameter;
import wallbook.quantity.Force;
import wallbook.quantity.Length;
import wallbook.quantity.LinearMass;
import wallbook.quantity.Voltage;
import wallbook.record.Cable;
import wallbook.record.Conduit;
import wallbook.record.ConduitCondition;
import wallbook.record.ConduitEnd;
import wallbook.record.ConduitType;
import wallbook.record.Feed;
import wallbook.record.Finish;
import wallbook.record.Job;
import wallbook.record.JobFacts;
import wallbook.record.JobRecord;
import wallbook.record.Medium;
import wallbook.record.Origin;
import wallbook.record.PathPiece;
import wallbook.record.Place;
import wallbook.record.PlaceKind;
import wallbook.record.PlaceUse;
import wallbook.record.Proof;
import wallbook.record.ProofMethod;
import wallbook.record.PullString;
import wallbook.record.Run;
import wallbook.record.RunCondition;
import wallbook.record.RunEnd;

/** Small jobs with conduits, for tests: only what a conduit's assessment reads is filled in. */
final class Jobs {
  private static final Origin NOWHERE = new Origin(new SourcePosition("job.yaml", 1, 1), Map.of());

  private Jobs() {}

  /** A clear, proved ENT of 1 in without contents and without a recorded path. */
  static ConduitBuilder conduit(String id) {
    return new ConduitBuilder(id);
  }

  static CableBuilder cable(String id, double diameterIn) {
    return new CableBuilder(id).diameter(diameterIn);
  }

  static PathPiece straight(double feet) {
    return straight(feet, 0);
  }

  static PathPiece straight(double feet, double riseDegrees) {
    return new PathPiece(
        NOWHERE,
        Optional.of(Length.feet(feet)),
        Optional.empty(),
        Optional.empty(),
        riseDegrees == 0 ? Optional.empty() : Optional.of(Angle.degrees(riseDegrees)),
        Optional.empty());
  }

  static PathPiece bend(double degrees) {
    return new PathPiece(
        NOWHERE,
        Optional.empty(),
        Optional.of(Angle.degrees(degrees)),
        Optional.empty(),
        Optional.empty(),
        Optional.empty());
  }

  static PathPiece bend(double degrees, Length radius) {
    return new PathPiece(
        NOWHERE,
        Optional.empty(),
        Optional.of(Angle.degrees(degrees)),
        Optional.of(radius),
        Optional.empty(),
        Optional.empty());
  }

  static PathPiece pullBox(String name) {
    return new PathPiece(
        NOWHERE,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.of(name));
  }

  static Run run(String id, String cable, String... conduits) {
    RunEnd end =
        new RunEnd(
            NOWHERE,
            Optional.of("p"),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Finish.COILED,
            Optional.empty(),
            Optional.empty());
    return run(id, cable, end, Optional.empty(), List.of(conduits));
  }

  static Run fed(Run run) {
    Feed feed =
        new Feed(NOWHERE, Voltage.volts(12), Optional.empty(), Optional.empty(), Optional.empty());
    return run(run.id(), run.cable(), run.from(), Optional.of(feed), run.conduits());
  }

  private static Run run(
      String id, String cable, RunEnd end, Optional<Feed> feed, List<String> conduits) {
    return new Run(
        NOWHERE,
        id,
        id,
        cable,
        end,
        end,
        Optional.empty(),
        Optional.empty(),
        RunCondition.DARK,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        conduits,
        List.of(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        feed,
        Optional.empty(),
        Optional.empty());
  }

  static Place place(String id, PlaceKind kind) {
    return new Place(
        NOWHERE,
        id,
        Optional.empty(),
        id,
        "room",
        kind,
        PlaceUse.CONDUIT,
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        Optional.empty(),
        List.of(),
        Optional.empty());
  }

  static Job job(List<Conduit> conduits, List<Run> runs, List<Cable> cables, Place... places) {
    JobFacts facts =
        new JobFacts(
            NOWHERE,
            "demo",
            "Invented house",
            Optional.empty(),
            Optional.empty(),
            1,
            List.of(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.empty(),
            Optional.of(true),
            List.of(),
            Optional.empty(),
            List.of(),
            Optional.empty());
    JobRecord record =
        new JobRecord(
            NOWHERE,
            1,
            facts,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(places),
            List.of(),
            runs,
            List.of(),
            conduits,
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of(),
            List.of());
    return new Job(record, cables, Map.of());
  }

  static final class CableBuilder {
    private final String id;
    private Medium medium = Medium.BALANCED_PAIR;
    private Optional<Integer> pairs = Optional.of(4);
    private Optional<Integer> fibres = Optional.empty();
    private Optional<Integer> gauge = Optional.empty();
    private Optional<Integer> conductors = Optional.empty();
    private Optional<Length> diameter = Optional.empty();
    private Optional<LinearMass> weight = Optional.empty();
    private Optional<Force> tension = Optional.empty();

    private CableBuilder(String id) {
      this.id = id;
    }

    CableBuilder medium(Medium other) {
      medium = other;
      pairs = other == Medium.BALANCED_PAIR ? pairs : Optional.empty();
      return this;
    }

    CableBuilder pairs(int number) {
      pairs = Optional.of(number);
      return this;
    }

    CableBuilder fibres(int number) {
      fibres = Optional.of(number);
      return medium(Medium.FIBRE);
    }

    CableBuilder conductors(int awg, int number) {
      gauge = Optional.of(awg);
      conductors = Optional.of(number);
      return medium(Medium.SPEAKER);
    }

    CableBuilder diameter(double inches) {
      diameter = Optional.of(Length.inches(inches));
      return this;
    }

    CableBuilder noDiameter() {
      diameter = Optional.empty();
      return this;
    }

    CableBuilder weight(double poundsPerThousandFeet) {
      weight = Optional.of(LinearMass.poundsPerThousandFeet(poundsPerThousandFeet));
      return this;
    }

    CableBuilder tension(double poundsForce) {
      tension = Optional.of(Force.poundsForce(poundsForce));
      return this;
    }

    Cable build() {
      return new Cable(
          NOWHERE,
          id,
          id,
          medium,
          Optional.empty(),
          pairs,
          Optional.empty(),
          Optional.empty(),
          fibres,
          Optional.empty(),
          gauge,
          conductors,
          Optional.empty(),
          diameter,
          weight,
          Optional.empty(),
          List.of(),
          tension,
          Optional.empty(),
          Optional.empty());
    }
  }

  static final class ConduitBuilder {
    private final String id;
    private ConduitType type = ConduitType.ENT;
    private String size = "1";
    private Optional<Length> bore = Optional.empty();
    private Optional<Length> length = Optional.empty();
    private List<PathPiece> path = List.of();
    private List<String> contents = List.of();
    private Optional<Proof> proof =
        Optional.of(
            new Proof(
                NOWHERE,
                LocalDate.of(2026, 2, 11),
                ProofMethod.MANDREL,
                Optional.of(Length.inches(1))));
    private ConduitCondition condition = ConduitCondition.CLEAR;
    private ConduitEnd from = end(Optional.empty());
    private ConduitEnd to = end(Optional.empty());

    private ConduitBuilder(String id) {
      this.id = id;
    }

    private static ConduitEnd end(Optional<String> place) {
      return new ConduitEnd(
          NOWHERE,
          place,
          Optional.empty(),
          place.isPresent() ? Optional.empty() : Optional.of("attic"),
          Optional.empty());
    }

    ConduitBuilder type(ConduitType family, String tradeSize) {
      type = family;
      size = tradeSize;
      return this;
    }

    ConduitBuilder bore(Length declared) {
      bore = Optional.of(declared);
      return this;
    }

    ConduitBuilder length(Length total) {
      length = Optional.of(total);
      return this;
    }

    ConduitBuilder path(PathPiece... pieces) {
      path = List.of(pieces);
      return this;
    }

    ConduitBuilder contents(String... runs) {
      contents = List.of(runs);
      return this;
    }

    ConduitBuilder proved(ProofMethod by, Optional<Diameter> size) {
      proof =
          Optional.of(
              new Proof(NOWHERE, LocalDate.of(2026, 2, 11), by, size.map(Diameter::asLength)));
      return this;
    }

    ConduitBuilder notProved() {
      proof = Optional.empty();
      return this;
    }

    ConduitBuilder condition(ConduitCondition state) {
      condition = state;
      return this;
    }

    ConduitBuilder endsAt(String place) {
      to = end(Optional.of(place));
      return this;
    }

    Conduit build() {
      return new Conduit(
          NOWHERE,
          id,
          id,
          id,
          type,
          size,
          bore,
          from,
          to,
          length,
          new ArrayList<>(path),
          contents,
          PullString.UNKNOWN,
          proof,
          condition,
          Optional.empty(),
          Optional.empty(),
          Optional.empty(),
          Optional.empty());
    }
  }
}
