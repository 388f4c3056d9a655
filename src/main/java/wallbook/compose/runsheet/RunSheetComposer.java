package wallbook.compose.runsheet;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import wallbook.assess.outlook.Prospect;
import wallbook.compose.Composition;
import wallbook.compose.Letters;
import wallbook.compose.Speech;
import wallbook.compose.result.ResultView;
import wallbook.compose.result.Results;
import wallbook.compose.result.SourceList;
import wallbook.record.Run;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the technician's view of a run. */
public final class RunSheetComposer {
  private final Composition composition;
  private final Wording wording;
  private final Speech speech;

  public RunSheetComposer(Composition composition) {
    this.composition = composition;
    this.wording = composition.wording();
    this.speech = new Speech(wording, composition.describe());
  }

  /** The view of one run. */
  public RunSheetView compose(Run run) {
    SourceList sources = new SourceList();
    Results results = new Results(wording, sources);
    RunFacts facts = new RunFacts(composition);
    List<ResultView> views =
        composition.assessments().of(run.id()).stream().map(results::view).toList();
    Letters letters = new Letters(views.stream().map(ResultView::assumptions).toList());
    return new RunSheetView(
        run.label(),
        composition.describe().cable(run),
        facts.of(run),
        facts.tests(run),
        views.stream()
            .map(view -> new RunSheetView.Line(view, letters.of(view.assumptions())))
            .toList(),
        letters.always(),
        letters.lettered(),
        composition.outlook().of(run.id()).stream().map(this::prospect).toList(),
        sources.list(wording));
  }

  private RunSheetView.Prospect prospect(Prospect prospect) {
    boolean blocked = prospect.blocker().isPresent();
    List<Phrase> needs =
        blocked
            ? List.of(prospect.blocker().get())
            : Stream.concat(prospect.first().stream(), prospect.adds().stream()).toList();
    return new RunSheetView.Prospect(
        wording.say(prospect.name()),
        speech.answer(prospect.verdict()),
        Speech.joined(speech.say(needs)),
        blocked ? Optional.empty() : Optional.of(speech.who(prospect.everyone())));
  }
}
