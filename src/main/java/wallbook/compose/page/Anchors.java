package wallbook.compose.page;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import wallbook.compose.Caution;
import wallbook.record.Conduit;
import wallbook.record.Head;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Panel;
import wallbook.record.Place;
import wallbook.record.Run;
import wallbook.record.Space;

/**
 * Names of the parts of a page. A cable or conduit is named by its label, which a scanned code
 * gives, where the label can stand in an address as it is; everything else by its id.
 */
final class Anchors {
  private final Map<String, String> byLabel = new HashMap<>();

  Anchors(Job job) {
    Set<String> taken = new HashSet<>();
    job.runs().forEach(run -> name("run/", run.id(), run.label(), taken));
    job.conduits().forEach(c -> name("conduit/", c.id(), c.label(), taken));
  }

  private void name(String kind, String id, String label, Set<String> taken) {
    boolean speakable = label.matches("[A-Za-z0-9][A-Za-z0-9._~-]*");
    String anchor = kind + (speakable ? label : id);
    while (!taken.add(anchor)) {
      anchor += "~";
    }
    byLabel.put(kind + id, anchor);
  }

  String of(Run run) {
    return byLabel.get("run/" + run.id());
  }

  String of(Conduit conduit) {
    return byLabel.get("conduit/" + conduit.id());
  }

  String of(Space space) {
    return "room/" + space.id();
  }

  String of(Place place) {
    return "place/" + place.id();
  }

  String of(Head head) {
    return "head/" + head.id();
  }

  String of(Head head, Panel panel) {
    return "panel/" + head.id() + "/" + panel.id();
  }

  String of(Head head, Panel panel, int port) {
    return "port/" + head.id() + "/" + panel.id() + "/" + port;
  }

  String of(HouseSystem system) {
    return "system/" + system.id();
  }

  static String of(Caution caution) {
    return "caution/" + caution.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  static String ofService(String service) {
    return "service/" + service;
  }
}
