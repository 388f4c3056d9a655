package wallbook.compose.disclosure;

import java.util.Locale;

/** Somebody who is given facts of the record; a column of the table {@code disclosure}. */
public enum Recipient {
  /** The owner alone. */
  OWNER,
  /** Whoever opens the offline page: the household, a guest, a technician, a provider. */
  PAGE,
  /** A trade that gets its own sheet. */
  TRADE;

  String column() {
    return name().toLowerCase(Locale.ROOT);
  }
}
