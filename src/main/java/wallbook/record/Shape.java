package wallbook.record;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The shape of a record type as its file has it: which keys, of what type, which may be left out.
 * Read once from the type itself; the reader, the schema and the field reference all go by it.
 *
 * @param type the record type
 * @param fields its keys in order, without the origin
 * @param oneOf keys of which exactly one is given; empty if there is no such rule
 */
public record Shape(Class<? extends Record> type, List<Field> fields, List<String> oneOf) {
  private static final Map<Class<?>, Shape> KNOWN = new ConcurrentHashMap<>();

  /**
   * One key.
   *
   * @param key as written in the file
   * @param presence whether it must be given
   * @param type type of the value; of a list, of its items
   * @param component where annotations are found
   */
  public record Field(String key, Presence presence, Class<?> type, RecordComponent component) {

    /** What the key says, for a person. */
    public Says says() {
      return component.getAnnotation(Says.class);
    }

    /** Kind of thing that the value is the id of, if it is one. */
    public Optional<Kind> refersTo() {
      return Optional.ofNullable(component.getAnnotation(RefersTo.class)).map(RefersTo::value);
    }

    /** Kind of the thing whose own id this is, if it is one. */
    public Optional<Kind> identifies() {
      return Optional.ofNullable(component.getAnnotation(Id.class)).map(Id::value);
    }

    /** The value of this field in a thing of the shape: plain, optional or a list. */
    public Object value(Record thing) {
      try {
        return component.getAccessor().invoke(thing);
      } catch (ReflectiveOperationException e) {
        throw new IllegalStateException("cannot read " + key, e);
      }
    }

    /** Whether the value has the form of an id. */
    public boolean hasIdForm() {
      return identifies().isPresent() || component.isAnnotationPresent(LocalName.class);
    }
  }

  /** Whether a key must be given, and how often its value may come. */
  public enum Presence {
    REQUIRED,
    OPTIONAL,
    LIST
  }

  /** The shape of a record type. */
  public static Shape of(Class<? extends Record> type) {
    Shape known = KNOWN.get(type);
    if (known == null) {
      known = read(type);
      KNOWN.put(type, known);
    }
    return known;
  }

  /** Name of a type as a record would write it: {@code RunEnd} is {@code run_end}. */
  public static String nameOf(Class<?> type) {
    return snakeCase(type.getSimpleName()).replaceFirst("^_", "");
  }

  /** The field of the given key, if there is one. */
  public Optional<Field> field(String key) {
    return fields.stream().filter(f -> f.key().equals(key)).findFirst();
  }

  /** All keys in order. */
  public List<String> keys() {
    return fields.stream().map(Field::key).toList();
  }

  /**
   * Makes a record of this shape.
   *
   * @param origin where it stands
   * @param values values of the fields in order: the value, an optional or a list by the presence
   */
  public Record make(Origin origin, List<Object> values) {
    List<Object> arguments = new ArrayList<>();
    arguments.add(origin);
    arguments.addAll(values);
    try {
      Class<?>[] types =
          Arrays.stream(type.getRecordComponents())
              .map(RecordComponent::getType)
              .toArray(Class<?>[]::new);
      Constructor<? extends Record> constructor = type.getDeclaredConstructor(types);
      return constructor.newInstance(arguments.toArray());
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException(e.getCause().getMessage(), e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot make " + type.getSimpleName(), e);
    }
  }

  private static Shape read(Class<? extends Record> type) {
    List<Field> fields = new ArrayList<>();
    for (RecordComponent component : type.getRecordComponents()) {
      if (component.getType() != Origin.class) {
        fields.add(field(component));
      }
    }
    OneOf oneOf = type.getAnnotation(OneOf.class);
    return new Shape(type, List.copyOf(fields), oneOf == null ? List.of() : List.of(oneOf.value()));
  }

  private static Field field(RecordComponent component) {
    Class<?> type = component.getType();
    String key = snakeCase(component.getName());
    if (type == Optional.class) {
      return new Field(key, Presence.OPTIONAL, inner(component), component);
    } else if (type == List.class) {
      return new Field(key, Presence.LIST, inner(component), component);
    }
    return new Field(key, Presence.REQUIRED, type == int.class ? Integer.class : type, component);
  }

  private static Class<?> inner(RecordComponent component) {
    Type generic = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
    return (Class<?>) generic;
  }

  private static String snakeCase(String name) {
    return name.replaceAll("([A-Z])", "_$1").toLowerCase(Locale.ROOT);
  }
}
