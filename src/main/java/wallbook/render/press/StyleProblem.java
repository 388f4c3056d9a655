package wallbook.render.press;

import java.util.Objects;

/** A stylesheet, or a style in the page, that can't be followed as it is written. */
public final class StyleProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private final String near;
  private final boolean ofPage;

  /**
   * @param problem what is wrong, a sentence
   * @param near the piece that is meant, as it is written
   */
  StyleProblem(String problem, String near) {
    this(problem, near, false);
  }

  private StyleProblem(String problem, String near, boolean ofPage) {
    super(problem);
    this.near = Objects.requireNonNull(near).strip();
    this.ofPage = ofPage;
  }

  /** A problem of the page, not of its stylesheet. */
  static StyleProblem ofPage(String problem, String near) {
    return new StyleProblem(problem, near, true);
  }

  /** Whether the page is to blame, not its stylesheet. */
  public boolean isOfPage() {
    return ofPage;
  }

  /** The piece that is meant, as it is written. */
  public String near() {
    return near;
  }
}
