package wallbook.compose.page;

import java.util.Optional;

/** Where something ends, in words, and the part of the page that tells of it, if there is one. */
public record Ref(String text, Optional<String> anchor) {
  static Ref to(Link link) {
    return new Ref(link.text(), Optional.of(link.anchor()));
  }

  static Ref plain(String text) {
    return new Ref(text, Optional.empty());
  }
}
