package wallbook.picture;

/** A file that documents can't show as a picture. */
public final class PictureRefused extends Exception {
  private static final long serialVersionUID = 1L;

  /** Why. */
  public enum Reason {
    /** Its name or first bytes belong to neither a JPEG nor a PNG file. */
    OTHER_FORM,
    /** More bytes or pixels than the program takes. */
    TOO_LARGE,
    /** It begins as a picture but can't be read to its end. */
    DAMAGED
  }

  private final Reason reason;

  PictureRefused(Reason reason, Throwable cause) {
    super(reason.name(), cause);
    this.reason = reason;
  }

  public Reason reason() {
    return reason;
  }
}
