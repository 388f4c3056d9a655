package wallbook.compose.drawing;

/** Any drawing of the handover package; the renderer has one case for each. */
public sealed interface Drawing
    permits RoomPlan,
        WallElevation,
        FloorPlan,
        SitePlan,
        PanelMap,
        ConduitSection,
        Legend,
        OneLine,
        SweepPlot {
  /** The room on the page, and the words for a reader who cannot see the picture. */
  Frame frame();
}
