package wallbook.compose.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import wallbook.compose.change.Change.FieldChange;
import wallbook.compose.change.ChangeNoticeView.Group;
import wallbook.compose.change.ChangeNoticeView.Line;
import wallbook.record.JobRecord;
import wallbook.wording.Phrase;
import wallbook.wording.Wording;

/** Composes the change notice. */
public final class ChangeNoticeComposer {
  private final JobRecord before;
  private final JobRecord after;
  private final Wording wording;
  private final FieldValue was;
  private final FieldValue is;

  public ChangeNoticeComposer(JobRecord before, JobRecord after, Wording wording) {
    this.before = before;
    this.after = after;
    this.wording = wording;
    this.was = new FieldValue(before);
    this.is = new FieldValue(after);
  }

  /** The notice of everything that changed from the one record to the other. */
  public ChangeNoticeView compose() {
    List<Change> changes = Comparison.of(before, after, wording);
    List<Group> groups = new ArrayList<>();
    for (ChangeSort sort : ChangeSort.values()) {
      List<Line> lines = changes.stream().filter(c -> c.sort() == sort).map(this::line).toList();
      if (!lines.isEmpty()) {
        String key = "change." + sort.name().toLowerCase(Locale.ROOT);
        groups.add(new Group(wording.say(key), wording.say(key + ".meaning"), lines));
      }
    }
    Phrase replaces =
        Phrase.of("change.replaces", "old", before.job().revision(), "new", after.job().revision());
    return new ChangeNoticeView(wording.say(replaces), List.copyOf(groups));
  }

  private Line line(Change change) {
    return new Line(
        wording.say("change.list." + change.list()),
        change.name(),
        change.fields().stream().map(this::detail).toList());
  }

  private String detail(FieldChange field) {
    String key =
        field.before().isEmpty()
            ? "change.now"
            : field.after().isEmpty() ? "change.no-longer" : "change.from-to";
    return wording.say(
        Phrase.of(
            key,
            "field",
            new FieldName(wording).of(field.key()),
            "before",
            was.of(field.key(), field.before()),
            "after",
            is.of(field.key(), field.after())));
  }
}
