package wallbook.assess.outlook;

import wallbook.record.Word;

/** What a service is about, in the order in which documents list them. */
public enum ServiceFamily implements Word {
  NETWORK,
  PROVIDER,
  POWER,
  PICTURE,
  RECEPTION,
  CELLULAR,
  SOUND,
  EXTENSION,
  SUPPLY,
  CONTROL,
  CABLE,
  CONNECTOR
}
