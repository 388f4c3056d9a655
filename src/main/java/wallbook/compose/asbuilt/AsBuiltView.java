package wallbook.compose.asbuilt;

import java.util.List;
import java.util.Optional;
import wallbook.compose.CautionView;
import wallbook.compose.ContactView;
import wallbook.compose.FactView;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.figure.PhotoView;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.SourceView;

/**
 * The technician's as-built, ready to print.
 *
 * @param facts the house in a few figures
 * @param oneLine the house in one line; absent for a house without a head
 * @param leftOut how many conduits had no room in it, in words; absent if none
 * @param rooms spaces with places, by floor from below
 * @param loose runs that end at no place, so that no room shows them
 * @param damaged runs that carry nothing
 * @param openEnds ends without a connector, by place and then by head
 * @param openPhotos what their places and walls looked like, before drywall first
 * @param outside exterior ends
 * @param index every label in order, row by row, the last row filled up with blanks
 * @param sources what the numbers in square brackets stand for
 */
public record AsBuiltView(
    List<FactView> facts,
    Optional<String> jurisdiction,
    List<String> codes,
    Optional<String> note,
    List<ContactView> contacts,
    Optional<Drawing> oneLine,
    Optional<String> leftOut,
    List<RoomSchedule> rooms,
    List<RunRow> loose,
    List<HeadSchedule> heads,
    List<SystemSchedule> systems,
    CapacityView capacity,
    List<ConduitSheet> conduits,
    List<BoxSheet> boxes,
    TestsView tests,
    List<DamagedRow> damaged,
    List<OpenPlace> openEnds,
    List<PhotoView> openPhotos,
    List<OutsideEnd> outside,
    List<CableType> cables,
    List<ExceptionRow> exceptions,
    List<RevisionRow> revisions,
    List<List<IndexEntry>> index,
    List<CautionView> cautions,
    List<SourceView> sources) {

  /** A space with its places. */
  public record RoomSchedule(
      String name, String floor, Optional<String> note, List<PlaceRows> places) {}

  /** A place with its runs. */
  public record PlaceRows(
      String name,
      Optional<String> plate,
      String kind,
      String where,
      Optional<String> note,
      List<RunRow> runs) {}

  /**
   * A run as seen from one of its ends.
   *
   * @param anchor where the index leads; absent where the run stands elsewhere too
   * @param end how this end was left
   * @param capacity code of what it may carry, the head of a table further on; absent if nothing
   *     was computed for it
   */
  public record RunRow(
      Optional<String> anchor,
      String label,
      String jack,
      String cable,
      String otherEnd,
      String length,
      String end,
      String state,
      String tested,
      Optional<String> capacity) {}

  /** A head with its panels. */
  public record HeadSchedule(
      String name,
      String where,
      Optional<String> note,
      List<PanelSchedule> panels,
      List<RunRow> loose) {}

  /**
   * A panel with its drawing and a line for each port in use.
   *
   * @param shortName what schedules call it
   */
  public record PanelSchedule(
      String shortName,
      String name,
      String kind,
      Optional<String> note,
      Drawing map,
      List<PortRow> ports) {}

  /** A port in use. */
  public record PortRow(
      String port,
      String label,
      String cable,
      String otherEnd,
      String length,
      String end,
      String state,
      Optional<String> capacity) {}

  /** A system with its runs. */
  public record SystemSchedule(
      String name, Optional<String> works, Optional<String> later, List<SystemRow> runs) {}

  /** A run as part of a system. */
  public record SystemRow(
      String label, String serves, String cable, String from, String to, String state) {}

  /**
   * A conduit.
   *
   * @param section cut across, to scale; absent where bore or cables are not known
   * @param facts what the record says, by name
   * @param contents runs in it, each with label and cable
   * @param path its pieces in order, in words; absent if not recorded
   * @param results bore, fill, bends, lengths, pull of what lies in it
   * @param room how many more of each cable type
   */
  public record ConduitSheet(
      String label,
      String name,
      Optional<Drawing> section,
      List<FactView> facts,
      Optional<String> contents,
      Optional<String> path,
      List<ResultView> results,
      List<RoomRow> room) {}

  /**
   * Room for one cable type in a conduit.
   *
   * @param byCode how many more by the code's table, with verdict
   * @param byPractice how many more by practice, with verdict
   * @param pull tension of one more from the better end, of its limit
   * @param pullMargin what is left of the limit
   * @param sources numbers of the sources
   */
  public record RoomRow(
      String cable,
      String byCode,
      String byPractice,
      String pull,
      String pullMargin,
      String decides,
      String sources) {}

  /** A pull box and how large it must be. */
  public record BoxSheet(String name, String where, List<ResultView> results) {}

  /** A run that carries nothing. */
  public record DamagedRow(
      String label, String cable, String from, String to, String why, String standsIn) {}

  /** A place, or a port of a head, with ends that have no connector. */
  public record OpenPlace(String name, String where, Optional<String> note, List<OpenEnd> ends) {}

  /** An end without a connector. */
  public record OpenEnd(
      String label, String cable, String left, String slack, String found, String otherEnd) {}

  /**
   * An exterior end.
   *
   * @param tape how to find it with tapes; absent where its ties do not give a point
   * @param results whether the ties agree, and the cover
   * @param photos what the place looked like
   */
  public record OutsideEnd(
      String name,
      String space,
      Optional<String> tape,
      String coiled,
      String obstacles,
      Optional<String> toLay,
      Optional<String> note,
      List<ResultView> results,
      List<PhotoView> photos) {}

  /** A cable type in use. */
  public record CableType(
      String name, String medium, String runs, String diameter, String jacket, String marks) {}

  /** Something that is not as promised. */
  public record ExceptionRow(
      String what, String kind, String standsIn, String state, Optional<String> note) {}

  /** An issue of the record. */
  public record RevisionRow(String revision, String date, String by, String what) {}

  /** A label and where its schedule is; a blank has neither. */
  public record IndexEntry(String label, Optional<String> anchor) {}
}
