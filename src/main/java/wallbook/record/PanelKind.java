package wallbook.record;

/** Kind of panel in a head. */
public enum PanelKind implements Word {
  PATCH_PANEL,
  COAX_PANEL,
  COAX_SPLITTER,
  BINDING_POSTS,
  TERMINAL_STRIP,
  FIBRE_TRAY;
}
