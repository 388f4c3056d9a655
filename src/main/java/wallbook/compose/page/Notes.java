package wallbook.compose.page;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * The statements that go with results, numbered from 1 in the order they are first made. A house
 * has a thousand results and a few hundred different statements.
 */
final class Notes {
  private record Note(String term, String text) {}

  private final Map<Note, Integer> numbers = new LinkedHashMap<>();

  /** Number of a statement; one not made before gets the next. */
  String number(String term, String text) {
    return numbers.computeIfAbsent(new Note(term, text), n -> numbers.size() + 1).toString();
  }

  /** All statements so far, in the order of their numbers. */
  List<NoteView> list() {
    return numbers.entrySet().stream()
        .map(e -> new NoteView(e.getValue().toString(), e.getKey().term(), e.getKey().text()))
        .toList();
  }
}
