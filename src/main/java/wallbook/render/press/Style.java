package wallbook.render.press;

import java.util.List;

/**
 * All that is said of the look of an element, with what it takes from the elements around.
 *
 * @param type look of its text
 * @param block how its lines stand
 * @param box look of its box
 * @param content what is written for it, before or after its own; empty if nothing is
 */
record Style(TypeStyle type, BlockStyle block, BoxStyle box, List<Content> content) {
  Style {
    content = List.copyOf(content);
  }

  Keywords.Display display() {
    return box.display();
  }
}
