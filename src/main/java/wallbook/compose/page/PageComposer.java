package wallbook.compose.page;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import wallbook.assess.outlook.Outlook;
import wallbook.assess.outlook.WishAssessor;
import wallbook.compose.Caution;
import wallbook.compose.Composition;
import wallbook.compose.disclosure.DisclosedJob;
import wallbook.compose.disclosure.Recipient;
import wallbook.compose.drawing.Drawing;
import wallbook.compose.drawing.SymbolKind;
import wallbook.compose.figure.PlanDrawings;
import wallbook.compose.figure.SitePlanDrawing;
import wallbook.compose.figure.Symbols;
import wallbook.compose.page.PageView.AnchoredCaution;
import wallbook.compose.page.PageView.CableState;
import wallbook.compose.page.PageView.Copy;
import wallbook.compose.page.PageView.Example;
import wallbook.compose.page.PageView.PartyView;
import wallbook.compose.page.PageView.ServiceCard;
import wallbook.compose.page.PageView.SystemCard;
import wallbook.record.HouseSystem;
import wallbook.record.Job;
import wallbook.record.Party;
import wallbook.record.PartyRole;
import wallbook.reference.Tables;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the offline page for one reader. */
public final class PageComposer {
  private static final double TALLEST_SITE_PLAN_MM = 190;
  private static final Tables TABLES = new Tables();

  private final Outlook outlook;
  private final DisclosedJob disclosed;
  private final Recipient recipient;
  private final Job job;
  private final Wording wording;
  private final PageWords words;
  private final PlanDrawings drawings;

  /**
   * @param disclosed the job of the composition as the recipient may see it
   */
  public PageComposer(Composition composition, DisclosedJob disclosed, Recipient recipient) {
    this.outlook = composition.outlook();
    this.disclosed = disclosed;
    this.recipient = recipient;
    this.job = disclosed.job();
    this.wording = composition.wording();
    this.words = new PageWords(job, wording, new Anchors(job));
    this.drawings = PlanDrawings.forScreen(job, wording);
  }

  /** The page. */
  public PageView compose() {
    Notes notes = new Notes();
    PagePhotos photos = new PagePhotos(job, wording);
    Carries carries = new Carries(wording, words.describe(), notes);
    RoomCards roomCards = new RoomCards(job, words, drawings, photos);
    List<RoomCard> rooms = roomCards.all();
    List<RunCard> runs = new RunCards(job, outlook, words, carries).all();
    List<HeadCard> heads = new HeadCards(disclosed, words, photos).all();
    List<ConduitCard> conduits =
        new ConduitCards(disclosed, outlook, wording, words, carries).all();
    List<SystemCard> systems = job.systems().stream().map(this::system).toList();
    List<ServiceCard> services =
        new ServiceCards(job, outlook, wording, words, carries, new WishAssessor(TABLES)).all();
    List<AnchoredCaution> cautions =
        Arrays.stream(Caution.values())
            .map(c -> new AnchoredCaution(Anchors.of(c), words.caution(c)))
            .toList();
    return new PageView(
        job.facts().title(),
        job.facts().address(),
        example(runs),
        copy(),
        roomCards.floors(),
        new SitePlanDrawing(job, wording, TABLES)
            .of(place -> true, TALLEST_SITE_PLAN_MM)
            .map(Drawing.class::cast),
        rooms,
        runs,
        heads,
        conduits,
        systems,
        services,
        contacts(),
        job.facts().jurisdiction(),
        job.facts().codes(),
        cautions,
        symbols(),
        photos.leftOut() == 0
            ? Optional.empty()
            : Optional.of(wording.say(Phrase.counted("page.photos-left-out", photos.leftOut()))),
        notes.list(),
        new Entries(words)
            .runs(runs)
            .rooms(rooms)
            .heads(heads)
            .conduits(conduits)
            .systems(systems)
            .services(services)
            .cautions(cautions)
            .all());
  }

  /** Shows that capitals and hyphens don't matter, where a label has some. */
  private static Optional<Example> example(List<RunCard> runs) {
    return runs.stream()
        .map(RunCard::label)
        .map(
            label ->
                new Example(
                    label.toLowerCase(Locale.ROOT).replaceAll("[^\\p{L}\\p{N}]", ""), label))
        .filter(e -> !e.typed().isEmpty() && !e.typed().equals(e.label()))
        .findFirst();
  }

  private Copy copy() {
    if (disclosed.withholdsSomething()) {
      return Copy.REDUCED;
    }
    return recipient == Recipient.OWNER ? Copy.OWNERS : Copy.PLAIN;
  }

  private SystemCard system(HouseSystem system) {
    return new SystemCard(
        words.anchors().of(system),
        system.name(),
        words.describe().word(system.kind()),
        system.works(),
        system.later(),
        system.demonstrated().map(d -> words.say("demonstrated", "date", d)),
        system.note(),
        job.runs().stream()
            .filter(r -> r.system().equals(Optional.of(system.id())))
            .map(r -> new CableState(words.link(r), words.state(r)))
            .toList());
  }

  private List<PartyView> contacts() {
    return job.facts().parties().stream()
        .filter(p -> p.role() != PartyRole.OWNER)
        .map(this::contact)
        .toList();
  }

  private PartyView contact(Party party) {
    return new PartyView(
        words.describe().word(party.role()),
        party.name(),
        party.phone(),
        party.phone().map(p -> p.replaceAll("[^0-9+]", "")).filter(p -> !p.isEmpty()),
        party.email());
  }

  private Optional<Drawing> symbols() {
    Set<SymbolKind> used = new LinkedHashSet<>();
    job.places().forEach(p -> used.add(Symbols.of(p)));
    job.heads().forEach(h -> used.add(Symbols.of(h.kind())));
    return used.isEmpty() ? Optional.empty() : Optional.of(drawings.legend(used));
  }
}
