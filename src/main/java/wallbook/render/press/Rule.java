package wallbook.render.press;

import java.util.List;

/**
 * What a stylesheet says of the elements that a selector fits.
 *
 * @param rank place among all rules by strength; a stronger one is applied later
 * @param important whether its declarations go before all others
 */
record Rule(Selector selector, List<Declaration> declarations, int rank, boolean important) {
  Rule {
    declarations = List.copyOf(declarations);
  }
}
