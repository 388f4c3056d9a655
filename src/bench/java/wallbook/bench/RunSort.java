package wallbook.bench;

/** The sorts of cable that an invented room has: from what panel, to what end, and how tested. */
enum RunSort {
  DATA("cat6", "P", "eight_position_jack", "eight_position_jack", "network", Test.CERTIFICATION),
  SPARE_DATA("cat6", "P", "eight_position_jack", "eight_position_jack", "network", Test.PAIRS),
  TELEVISION("cat6", "P", "eight_position_jack", "eight_position_jack", "television", Test.PAIRS),
  ACCESS_POINT(
      "cat6a", "P", "eight_position_jack", "eight_position_plug", "wifi", Test.CERTIFICATION),
  VOICE("cat6", "P", "eight_position_jack", "eight_position_jack", "voice", Test.PAIRS),
  OFF_AIR("series-6", "CX", "f_connector", "f_connector", "off-air", Test.CONTINUITY),
  DARK_FIBRE("om3-2", "F2", "", "", "fibre", Test.CONTINUITY),
  LIT_FIBRE("om3-2", "F1", "lc", "lc", "fibre", Test.LOSS),
  MUSIC("speaker-16-2", "B", "binding_post", "screw_terminal", "music", Test.RESISTANCE),
  GARDEN_MUSIC("speaker-16-4-burial", "B", "binding_post", "", "garden-music", Test.CONTINUITY),
  SHADE("power-16-4", "T", "screw_terminal", "", "shades", Test.TONING),
  KEYPAD("control-22-4", "K", "screw_terminal", "screw_terminal", "security", Test.CONTINUITY),
  CONTACT("control-22-2", "Z", "screw_terminal", "screw_terminal", "security", Test.CONTINUITY);

  /** How a cable was tested. */
  enum Test {
    CERTIFICATION,
    PAIRS,
    CONTINUITY,
    LOSS,
    RESISTANCE,
    TONING
  }

  private final String cable;
  private final String panel;
  private final String nearConnector;
  private final String farConnector;
  private final String system;
  private final Test test;

  RunSort(
      String cable,
      String panel,
      String nearConnector,
      String farConnector,
      String system,
      Test test) {
    this.cable = cable;
    this.panel = panel;
    this.nearConnector = nearConnector;
    this.farConnector = farConnector;
    this.system = system;
    this.test = test;
  }

  String cable() {
    return cable;
  }

  /** First letters of the panels that its near ends stand in. */
  String panel() {
    return panel;
  }

  /** Connector at the rack; empty if the cable is coiled there. */
  String nearConnector() {
    return nearConnector;
  }

  /** Connector at the place; empty if the cable is coiled there. */
  String farConnector() {
    return farConnector;
  }

  String system() {
    return system;
  }

  Test test() {
    return test;
  }

  boolean isFibre() {
    return this == DARK_FIBRE || this == LIT_FIBRE;
  }

  /** Whether the cable has four pairs in jacks. */
  boolean isPairs() {
    return panel.equals("P");
  }

  /** Why the cable does nothing yet; empty if it is in service. */
  String darkReason() {
    return switch (this) {
      case SPARE_DATA -> "spare jack; nothing to plug in yet";
      case DARK_FIBRE -> "not terminated until somebody needs it";
      case SHADE -> "make of the shades not chosen";
      case GARDEN_MUSIC -> "loudspeakers wait for the planting";
      default -> "";
    };
  }
}
