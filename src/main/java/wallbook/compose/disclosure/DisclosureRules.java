package wallbook.compose.disclosure;

import wallbook.record.PlaceUse;
import wallbook.record.SystemKind;
import wallbook.record.Word;
import wallbook.reference.Tables;

/** Which facts each reader is told, from the table {@code disclosure}. */
public final class DisclosureRules {
  private final Tables tables;

  public DisclosureRules(Tables tables) {
    this.tables = tables;
  }

  /** Whether the reader is told of systems of this kind. */
  public boolean tells(Recipient recipient, SystemKind kind) {
    return tells(recipient, "system", kind);
  }

  /** Whether the reader is told of places meant for this use. */
  public boolean tells(Recipient recipient, PlaceUse use) {
    return tells(recipient, "place", use);
  }

  private boolean tells(Recipient recipient, String kind, Word word) {
    return tables
        .table("disclosure")
        .find(kind, word.word())
        .map(row -> row.yes(recipient.column()))
        .orElse(true);
  }
}
