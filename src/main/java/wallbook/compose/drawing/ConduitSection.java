package wallbook.compose.drawing;

import java.util.List;

/**
 * A conduit cut across, to scale, with the cables in it.
 *
 * @param boreMm inner diameter in millimetres
 * @param fillText the fill as the reader sees it, in per cent
 * @param boreText the bore as the reader sees it
 * @param noRoomText what is written when the cables cannot be drawn inside the bore
 */
public record ConduitSection(
    Frame frame,
    double boreMm,
    List<Cable> cables,
    String fillText,
    String boreText,
    String noRoomText)
    implements Drawing {
  public ConduitSection {
    Values.positive("boreMm", boreMm);
    cables = List.copyOf(cables);
  }

  /** One cable: its label and its outer diameter in millimetres. */
  public record Cable(String label, double diameterMm) {
    public Cable {
      Values.positive("diameterMm", diameterMm);
    }
  }
}
