package wallbook.render.labels;

import java.util.ArrayList;
import java.util.List;

/** A part of what stands on a label beneath the label itself. */
sealed interface Part {
  /** What is left of a text that is cut off, from one try to the next. */
  double SHORTER = 0.85;

  /** Characters beyond which no label reaches. */
  int LONGEST_SHORTENED = 120;

  /** Characters that a text is not shortened below. */
  int SHORTEST = 6;

  String ELLIPSIS = "\u2026";

  /** How many forms it has. */
  int forms();

  /** Whether it may be left out where there is no room. */
  boolean optional();

  /** A text in forms, the fullest first. */
  record Text(List<String> texts, boolean bold, boolean optional) implements Part {
    public Text {
      texts = List.copyOf(texts);
    }

    @Override
    public int forms() {
      return texts.size();
    }

    String form(int index) {
      return texts.get(Math.min(index, texts.size() - 1));
    }

    /** The text in forms cut off ever sooner, which an ellipsis shows. */
    Text shortened() {
      String text = texts.get(texts.size() - 1);
      List<String> shortened = new ArrayList<>();
      int end = Math.min(text.length(), LONGEST_SHORTENED);
      while (end > SHORTEST) {
        end = (int) (end * SHORTER);
        int whole = text.offsetByCodePoints(0, text.codePointCount(0, end));
        shortened.add(text.substring(0, whole).strip() + ELLIPSIS);
      }
      return shortened.isEmpty() ? this : new Text(shortened, bold, optional);
    }
  }

  /** Short texts side by side in columns. */
  record Cells(List<String> texts) implements Part {
    public Cells {
      texts = List.copyOf(texts);
    }

    @Override
    public int forms() {
      return 1;
    }

    @Override
    public boolean optional() {
      return false;
    }
  }
}
