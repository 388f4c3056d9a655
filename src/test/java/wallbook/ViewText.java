package wallbook;

import java.lang.reflect.RecordComponent;
import java.util.List;
import java.util.Optional;

/** Prints a view model as indented text, so that it can be compared with an approved file. */
public final class ViewText {
  private ViewText() {}

  /** A view model, component by component. */
  public static String of(Record view) {
    StringBuilder text = new StringBuilder();
    print(text, view, 0);
    return text.toString();
  }

  private static void print(StringBuilder text, Record view, int depth) {
    for (RecordComponent component : view.getClass().getRecordComponents()) {
      print(text, component.getName(), value(view, component), depth);
    }
  }

  private static void print(StringBuilder text, String name, Object value, int depth) {
    String indent = "  ".repeat(depth);
    if (value instanceof Optional<?> optional) {
      optional.ifPresent(inner -> print(text, name, inner, depth));
    } else if (value instanceof List<?> list && list.stream().allMatch(String.class::isInstance)) {
      if (!list.isEmpty()) {
        text.append(indent).append(name).append(": ").append(String.join(" | ", strings(list)));
        text.append('\n');
      }
    } else if (value instanceof List<?> list) {
      list.forEach(item -> print(text, name, item, depth));
    } else if (value instanceof Record inner) {
      text.append(indent).append(name).append('\n');
      print(text, inner, depth + 1);
    } else {
      text.append(indent).append(name).append(": ").append(value).append('\n');
    }
  }

  private static List<String> strings(List<?> list) {
    return list.stream().map(String::valueOf).toList();
  }

  private static Object value(Record view, RecordComponent component) {
    try {
      return component.getAccessor().invoke(view);
    } catch (ReflectiveOperationException e) {
      throw new AssertionError(e);
    }
  }
}
