package wallbook.compose.page;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import wallbook.reference.Row;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/**
 * What owners wish for that a service helps towards, from the table {@code outlook-means}: a reader
 * who looks for a wish is led to services by the wish's own words.
 */
final class ServiceWishes {
  private static final Pattern SERVICE = Pattern.compile("[^ |;]+");

  private final Map<String, Set<String>> wishes = new HashMap<>();
  private final Wording wording;

  ServiceWishes(Tables tables, Wording wording) {
    this.wording = wording;
    for (Row means : tables.table("outlook-means").rows()) {
      SERVICE
          .matcher(means.text("legs"))
          .results()
          .forEach(
              service ->
                  wishes
                      .computeIfAbsent(service.group(), s -> new LinkedHashSet<>())
                      .add(means.text("wish")));
    }
  }

  /** The wishes that a service helps towards, in words. */
  List<String> of(String service) {
    List<String> said = new ArrayList<>();
    for (String wish : wishes.getOrDefault(service, Set.of())) {
      said.add(wording.say(Phrase.of("outlook.wish." + wish)));
    }
    return said;
  }
}
