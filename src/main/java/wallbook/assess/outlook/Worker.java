package wallbook.assess.outlook;

import wallbook.record.Word;

/** Who may do a piece of work, the most widely available first. */
public enum Worker implements Word {
  HOMEOWNER,
  INSTALLER,
  LANDSCAPER,
  PROVIDER,
  ELECTRICIAN
}
