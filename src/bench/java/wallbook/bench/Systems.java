package wallbook.bench;

import java.util.List;

/** The systems of the invented building. */
final class Systems {
  private Systems() {}

  static List<String> lines() {
    return List.of(
        line("network", "Home network", "data_network"),
        line("television", "Television", "television"),
        line("wifi", "Wireless network", "wireless_access"),
        line("voice", "Voice control", "voice_control"),
        line("off-air", "Off-air reception", "off_air"),
        line("fibre", "Fibre", "fibre"),
        line("music", "House music", "whole_house_audio"),
        line("garden-music", "Garden music", "landscape_audio"),
        line("shades", "Shades", "shades"),
        line("security", "Security", "security"));
  }

  private static String line(String id, String name, String kind) {
    return "  - {id: %s, name: %s, kind: %s, works: Shown at the walk-through., demonstrated: 2026-05-12}"
        .formatted(id, name, kind);
  }
}
