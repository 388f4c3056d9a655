package wallbook.render.press;

import java.util.Objects;

/** A stylesheet, or a style in the page, that can't be followed as it is written. */
public final class StyleProblem extends Exception {
  private static final long serialVersionUID = 1L;

  private final String near;

  /**
   * @param problem what is wrong, a sentence
   * @param near the piece of the stylesheet that is meant, as it is written
   */
  StyleProblem(String problem, String near) {
    super(problem);
    this.near = Objects.requireNonNull(near).strip();
  }

  /** The piece of the stylesheet that is meant, as it is written. */
  public String near() {
    return near;
  }
}
