package wallbook.compose.guide;

import java.util.List;
import java.util.Optional;
import wallbook.compose.CautionView;
import wallbook.compose.TermView;
import wallbook.compose.result.SourceView;

/**
 * The upgrade guide, ready to print: every text is in the reader's language and units. A reference
 * is the number of a source in the list at the end.
 *
 * @param verdicts the words that answers are given in, and what each means
 * @param efforts words for how much work a way takes, and what each means
 * @param standings how far a source may be trusted, and what that means
 * @param wishes a chapter for each wish that the house may have
 * @param waiting dark and unfinished cables by room
 * @param needs what each service of those tables needs besides the cable
 * @param results what those cables could carry, like cables told of together
 * @param dead cables that carry nothing
 * @param conduits absent if the house has none
 * @param stubOuts exterior ends that wait to be laid on
 * @param inService what cables in service could carry
 * @param remarks where the record has less than the usual provision
 * @param cautions that concern all work in the guide
 * @param terms words of the trade that the guide uses
 * @param sources in the order of their numbers
 */
public record GuideView(
    Optional<String> jurisdiction,
    List<String> codes,
    List<TermView> verdicts,
    List<TermView> efforts,
    List<TermView> standings,
    List<WishChapter> wishes,
    List<WaitingRoom> waiting,
    List<NeedRow> needs,
    List<ResultTable> results,
    List<DeadRow> dead,
    Optional<ConduitChapter> conduits,
    List<StubOutBlock> stubOuts,
    List<InServiceRow> inService,
    List<Remark> remarks,
    List<CautionView> cautions,
    List<TermView> terms,
    List<SourceView> sources) {

  /**
   * The ways the house offers for a wish.
   *
   * @param means the kinds of way that the rooms have, in the order they come
   * @param rooms those with a way
   * @param none names of those without a way
   * @param obstacles what would be at hand and can't serve, with the reason
   * @param facts what the record says that bears on it
   * @param alternative what may do instead, not assessed
   * @param cautions headings of those that concern the work of these ways
   */
  public record WishChapter(
      String wish,
      List<MeansRow> means,
      List<WishRoom> rooms,
      List<String> none,
      List<String> obstacles,
      List<String> facts,
      Optional<String> alternative,
      List<String> cautions) {}

  /**
   * A kind of way, whatever the room.
   *
   * @param needs what must be added, and conditions
   * @param notes what is to be said besides
   */
  public record MeansRow(String means, List<String> needs, String who, List<String> notes) {}

  /** A room's ways for a wish, best first. */
  public record WishRoom(String room, List<WayRow> ways) {}

  /**
   * A way; like cables are told of together.
   *
   * @param first what must be done to the cable or conduit
   * @param adds what must be added besides
   * @param general conditions that come with the kind of way
   * @param sharing which cables are in service, and for what
   * @param conditions what else must come true
   * @param margins what it rests on in short: margin, or else the figure, with reference
   * @param figures the same in full
   */
  public record WayRow(
      String means,
      String cables,
      String verdict,
      String effort,
      List<String> first,
      List<String> adds,
      String who,
      List<String> general,
      List<String> sharing,
      List<String> conditions,
      List<String> notes,
      List<String> margins,
      List<String> figures) {}

  /** Dark and unfinished cables whose far end is in a room. */
  public record WaitingRoom(String room, List<WaitingRow> cables) {}

  /**
   * A cable that waits.
   *
   * @param table number of the table that tells what it could carry
   */
  public record WaitingRow(
      String label,
      String cable,
      String from,
      String to,
      String length,
      String state,
      String why,
      int table) {}

  /**
   * What like cables could carry.
   *
   * @param number from 1
   * @param labels of the cables
   * @param lengths of the shortest and the longest
   * @param first what must be added whatever the use
   * @param lines what they could carry, then what the equipment decides by a figure
   * @param decided what a data sheet alone decides, with the reason
   * @param cannot what they can't carry, with the reason
   * @param notStated what can't be said, with what the record lacks
   * @param always what is assumed for every line
   * @param assumptions what is assumed for some lines, with the letter
   * @param remarks custom of the trade
   */
  public record ResultTable(
      int number,
      String cable,
      String state,
      List<String> labels,
      String lengths,
      List<String> first,
      List<ServiceLine> lines,
      List<String> decided,
      List<String> cannot,
      List<String> notStated,
      List<String> always,
      List<TermView> assumptions,
      List<String> remarks) {}

  /** A service that cables could carry. */
  public record ServiceLine(
      String service,
      String verdict,
      String value,
      String limit,
      String margin,
      String limitedBy,
      String reference,
      String letters) {}

  /** What services need at their ends, and who may add it. */
  public record NeedRow(String services, String adds, String who) {}

  /** A cable that carries nothing, why, and what stands in for it. */
  public record DeadRow(
      String label, String cable, String from, String to, String why, String standsIn) {}

  /**
   * The conduits.
   *
   * @param fits tables of cables and connectors, each for some of the conduits
   */
  public record ConduitChapter(List<ConduitRow> conduits, List<FitTable> fits) {}

  /** A conduit in words. */
  public record ConduitRow(
      String label,
      String name,
      String ends,
      String inside,
      String state,
      String pull,
      String purpose) {}

  /** What fits, by conduit: a column for each label. */
  public record FitTable(List<String> labels, List<FitRow> cables, List<FitRow> connectors) {}

  /** A cable or connector and what each conduit of the table makes of it. */
  public record FitRow(String name, List<String> cells, String references) {}

  /** An exterior end and how the line may go on from it. */
  public record StubOutBlock(String name, String where, List<String> facts, List<String> figures) {}

  /** Like cables in service and what they could carry. */
  public record InServiceRow(String labels, String cable, List<String> could) {}

  /** A remark on the usual provision. */
  public record Remark(String text, String reference) {}
}
