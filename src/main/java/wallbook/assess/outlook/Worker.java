package wallbook.assess.outlook;

/** Who may do a piece of work, the most widely available first. */
public enum Worker {
  HOMEOWNER,
  INSTALLER,
  PROVIDER,
  ELECTRICIAN
}
