package wallbook.compose.figure;

import wallbook.compose.drawing.SymbolKind;
import wallbook.record.HeadKind;
import wallbook.record.Place;
import wallbook.record.PlaceKind;

/** Which symbol a thing of the record is drawn with. */
public final class Symbols {
  private Symbols() {}

  public static SymbolKind of(Place place) {
    return switch (place.kind()) {
      case BLANK_PLATE -> SymbolKind.BLANK_PLATE;
      case IN_WALL_COIL -> SymbolKind.IN_WALL_COIL;
      case PULL_BOX -> SymbolKind.PULL_BOX;
      case STUB_OUT -> SymbolKind.STUB_OUT;
      case CONDUIT_END -> SymbolKind.CONDUIT_END;
      default -> ofUse(place);
    };
  }

  public static SymbolKind of(HeadKind head) {
    return switch (head) {
      case RACK -> SymbolKind.RACK;
      case STRUCTURED_PANEL, OTHER -> SymbolKind.PANEL;
      case DEMARCATION -> SymbolKind.DEMARCATION;
    };
  }

  private static SymbolKind ofUse(Place place) {
    boolean overhead = place.kind() == PlaceKind.CEILING_POINT;
    return switch (place.use()) {
      case TELEVISION -> SymbolKind.TELEVISION;
      case PROJECTOR -> SymbolKind.PROJECTOR;
      case SPEAKER, SUBWOOFER, LANDSCAPE_AUDIO ->
          overhead ? SymbolKind.CEILING_SPEAKER : SymbolKind.WALL_SPEAKER;
      case VOLUME_CONTROL -> SymbolKind.VOLUME_CONTROL;
      case DATA, FIXED_DEVICE -> SymbolKind.PLATE;
      case ACCESS_POINT -> SymbolKind.ACCESS_POINT;
      case KEYPAD -> SymbolKind.KEYPAD;
      case CONTACT -> SymbolKind.CONTACT;
      case MOTION_SENSOR, GLASS_BREAK_SENSOR -> SymbolKind.SENSOR;
      case REPEATER -> SymbolKind.REPEATER;
      case CAMERA -> SymbolKind.CAMERA;
      case TOUCH_PANEL, VOICE_POINT -> SymbolKind.TOUCH_PANEL;
      case SHADE -> SymbolKind.SHADE;
      case SATELLITE_ANTENNA, OFF_AIR_ANTENNA, CELLULAR_ANTENNA -> SymbolKind.ANTENNA;
      case DEMARCATION -> SymbolKind.DEMARCATION;
      case CONDUIT -> SymbolKind.CONDUIT_END;
      case OTHER -> SymbolKind.OTHER;
    };
  }
}
