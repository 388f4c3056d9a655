package wallbook.compose.page;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.Prospect;
import wallbook.assess.outlook.WishAssessor;
import wallbook.compose.RunState;
import wallbook.compose.Speech;
import wallbook.compose.page.PageView.Carrier;
import wallbook.compose.page.PageView.ServiceCard;
import wallbook.record.Job;
import wallbook.record.Run;
import wallbook.wording.Wording;

/** Turns round what cables could carry: from each service to the cables that could carry it. */
final class ServiceCards {
  private static final String CONDITIONAL = "conditional";

  private final Job job;
  private final Outlook outlook;
  private final Wording wording;
  private final PageWords words;
  private final Carries carries;
  private final WishAssessor wishes;
  private final Speech speech;

  ServiceCards(
      Job job,
      Outlook outlook,
      Wording wording,
      PageWords words,
      Carries carries,
      WishAssessor wishes) {
    this.job = job;
    this.outlook = outlook;
    this.wording = wording;
    this.words = words;
    this.carries = carries;
    this.wishes = wishes;
    this.speech = new Speech(wording, words.describe());
  }

  /** Services that some cable could carry, by name. */
  List<ServiceCard> all() {
    Map<String, String> names = new LinkedHashMap<>();
    Map<String, List<Carrier>> waiting = new LinkedHashMap<>();
    Map<String, List<Carrier>> busy = new LinkedHashMap<>();
    for (Run run : job.runs()) {
      for (Prospect prospect : outlook.of(run.id())) {
        if (prospect.possible()) {
          names.put(prospect.service(), speech.capital(wording.say(prospect.name())));
          (RunState.of(run).isDark() ? waiting : busy)
              .computeIfAbsent(prospect.service(), s -> new ArrayList<>())
              .add(carrier(run, prospect));
        }
      }
    }
    return names.entrySet().stream()
        .map(
            service ->
                new ServiceCard(
                    Anchors.ofService(service.getKey()),
                    service.getValue(),
                    wishes.towards(service.getKey()).stream()
                        .map(wish -> wording.say(wish.words()))
                        .toList(),
                    sureFirst(waiting.getOrDefault(service.getKey(), List.of())),
                    sureFirst(busy.getOrDefault(service.getKey(), List.of()))))
        .sorted(Comparator.comparing(ServiceCard::name, String.CASE_INSENSITIVE_ORDER))
        .toList();
  }

  private static List<Carrier> sureFirst(List<Carrier> carriers) {
    return carriers.stream()
        .sorted(
            Comparator.comparing((Carrier c) -> c.verdict().key().equals(CONDITIONAL))
                .thenComparing(c -> c.run().text(), String.CASE_INSENSITIVE_ORDER))
        .toList();
  }

  private Carrier carrier(Run run, Prospect prospect) {
    return new Carrier(words.link(run), carries.verdict(prospect), carries.margin(prospect));
  }
}
