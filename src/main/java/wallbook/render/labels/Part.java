package wallbook.render.labels;

import java.util.List;

/** A part of what stands on a label beneath the label itself. */
sealed interface Part {
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
