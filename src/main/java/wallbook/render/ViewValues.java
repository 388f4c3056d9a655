package wallbook.render;

import freemarker.template.Configuration;
import freemarker.template.SimpleObjectWrapper;
import freemarker.template.TemplateHashModel;
import freemarker.template.TemplateModel;
import freemarker.template.TemplateModelException;
import java.lang.invoke.MethodHandle;
import java.lang.invoke.MethodHandles;
import java.lang.invoke.MethodType;
import java.lang.reflect.Method;
import java.lang.reflect.Modifier;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import wallbook.quantity.Quantity;
import wallbook.wording.Phrase;

/**
 * Shows view models to templates, and nothing else of the program: a record is a bundle of named
 * values, an empty optional is a missing value, a phrase is its words, a quantity or date is text
 * for the reader. Any other object is refused, so a template can reach no Java class or method.
 */
final class ViewValues extends SimpleObjectWrapper {
  private static final MethodType READER = MethodType.methodType(Object.class, Object.class);
  private static final Set<String> OF_EVERY_OBJECT = Set.of("hashCode", "toString", "getClass");

  private final Say say;

  /** Handles, for reflection makes a class of its own for each method that is called often. */
  private final Map<Class<?>, Map<String, MethodHandle>> accessors = new ConcurrentHashMap<>();

  ViewValues(Say say) {
    super(Configuration.VERSION_2_3_34);
    this.say = say;
  }

  @Override
  public TemplateModel wrap(Object value) throws TemplateModelException {
    if (value instanceof Optional<?> optional) {
      return wrap(optional.orElse(null));
    } else if (value instanceof Phrase phrase) {
      return say.phrase(phrase);
    } else if (value instanceof Quantity || value instanceof LocalDate) {
      return super.wrap(say.text(value));
    } else if (value instanceof Enum<?> constant) {
      return super.wrap(constant.name());
    } else if (value instanceof Character character) {
      return super.wrap(character.toString());
    }
    return super.wrap(value);
  }

  @Override
  protected TemplateModel handleUnknownType(Object value) throws TemplateModelException {
    return value instanceof Record view ? new View(view) : new Opaque(value);
  }

  /** A record, as the template sees it. */
  private final class View implements TemplateHashModel, Holder {
    private final Record view;

    private View(Record view) {
      this.view = view;
    }

    @Override
    public TemplateModel get(String name) throws TemplateModelException {
      MethodHandle accessor =
          accessors.computeIfAbsent(view.getClass(), ViewValues::accessorsOf).get(name);
      if (accessor == null) {
        throw new TemplateModelException(
            "a " + view.getClass().getSimpleName() + " has no '" + name + "'");
      }
      return wrap(read(name, accessor));
    }

    private Object read(String name, MethodHandle accessor) throws TemplateModelException {
      try {
        return (Object) accessor.invokeExact((Object) view);
      } catch (Throwable e) {
        throw new TemplateModelException("'" + name + "' failed: " + e, e);
      }
    }

    @Override
    public boolean isEmpty() {
      return false;
    }

    @Override
    public Object held() {
      return view;
    }
  }

  /** An object that a template can only hand on, to a function such as {@code figure}. */
  private record Opaque(Object held) implements TemplateModel, Holder {}

  /** A template value that stands for an object of the view model. */
  interface Holder {
    Object held();
  }

  private static Map<String, MethodHandle> accessorsOf(Class<?> type) {
    Map<String, MethodHandle> found = new HashMap<>();
    for (Method method : type.getMethods()) {
      boolean readable =
          method.getParameterCount() == 0
              && method.getReturnType() != void.class
              && !Modifier.isStatic(method.getModifiers())
              && method.getDeclaringClass() != Object.class
              && !OF_EVERY_OBJECT.contains(method.getName());
      if (readable) {
        found.putIfAbsent(method.getName(), reader(method));
      }
    }
    return Map.copyOf(found);
  }

  private static MethodHandle reader(Method method) {
    method.setAccessible(true);
    try {
      return MethodHandles.lookup().unreflect(method).asType(READER);
    } catch (IllegalAccessException e) {
      throw new IllegalStateException(method + " was made accessible", e);
    }
  }
}
