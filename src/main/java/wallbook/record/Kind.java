package wallbook.record;

/** Kinds of things that have an id in the record and can be referred to. */
public enum Kind implements Word {
  FLOOR,
  SPACE,
  CORNER,
  HEAD,
  PLACE,
  CABLE,
  RUN,
  FIBRE,
  CONDUIT,
  STUB_OUT,
  TEST,
  ZONE,
  SYSTEM,
  EXCEPTION;
}
