package wallbook.record;

import java.lang.reflect.Constructor;
import java.lang.reflect.InvocationTargetException;
import java.lang.reflect.ParameterizedType;
import java.lang.reflect.RecordComponent;
import java.lang.reflect.Type;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;

/**
 * The shape of a record type as its file has it: which keys, of what type, which may be left out.
 * Read once from the type itself and kept; the reader, the schema and the field reference all go by
 * it.
 */
public final class Shape {
  private static final Map<Class<?>, Shape> KNOWN = new ConcurrentHashMap<>();

  private final Class<? extends Record> type;
  private final List<Field> fields;
  private final Map<String, Field> fieldByKey;
  private final List<String> oneOf;
  private final Optional<RecordComponent> origin;
  private final Constructor<? extends Record> constructor;

  /** One key. */
  public static final class Field {
    private final int index;
    private final String key;
    private final Presence presence;
    private final Class<?> type;
    private final RecordComponent component;
    private final Optional<Kind> refersTo;
    private final Optional<Kind> identifies;
    private final boolean idForm;

    private Field(
        int index, String key, Presence presence, Class<?> type, RecordComponent component) {
      this.index = index;
      this.key = key;
      this.presence = presence;
      this.type = type;
      this.component = component;
      this.refersTo =
          Optional.ofNullable(component.getAnnotation(RefersTo.class)).map(RefersTo::value);
      this.identifies = Optional.ofNullable(component.getAnnotation(Id.class)).map(Id::value);
      this.idForm = identifies.isPresent() || component.isAnnotationPresent(LocalName.class);
    }

    /** Where the field stands among those of its shape, counted from 0. */
    public int index() {
      return index;
    }

    /** The key as written in the file. */
    public String key() {
      return key;
    }

    /** Whether it must be given. */
    public Presence presence() {
      return presence;
    }

    /** Type of the value; of a list, of its items. */
    public Class<?> type() {
      return type;
    }

    /** What the key says, for a person. */
    public Says says() {
      return component.getAnnotation(Says.class);
    }

    /** Kind of thing that the value is the id of, if it is one. */
    public Optional<Kind> refersTo() {
      return refersTo;
    }

    /** Kind of the thing whose own id this is, if it is one. */
    public Optional<Kind> identifies() {
      return identifies;
    }

    /** Whether the value is an id, refers to one, or has the form of one. */
    public boolean isName() {
      return idForm || refersTo.isPresent();
    }

    /** The value of this field in a thing of the shape: plain, optional or a list. */
    public Object value(Record thing) {
      return get(component, thing);
    }

    /** Whether the value has the form of an id. */
    public boolean hasIdForm() {
      return idForm;
    }
  }

  /** Whether a key must be given, and how often its value may come. */
  public enum Presence {
    REQUIRED,
    OPTIONAL,
    LIST
  }

  private Shape(Class<? extends Record> type) {
    RecordComponent[] components = type.getRecordComponents();
    this.type = type;
    this.origin = Arrays.stream(components).filter(c -> c.getType() == Origin.class).findFirst();
    List<Field> found = new ArrayList<>();
    for (RecordComponent component : components) {
      if (component.getType() != Origin.class) {
        found.add(field(found.size(), component));
      }
    }
    this.fields = List.copyOf(found);
    this.fieldByKey = new HashMap<>();
    fields.forEach(field -> fieldByKey.put(field.key(), field));
    OneOf oneOfThese = type.getAnnotation(OneOf.class);
    this.oneOf = oneOfThese == null ? List.of() : List.of(oneOfThese.value());
    Class<?>[] types =
        Arrays.stream(components).map(RecordComponent::getType).toArray(Class<?>[]::new);
    try {
      this.constructor = type.getDeclaredConstructor(types);
    } catch (NoSuchMethodException e) {
      throw new IllegalStateException("cannot make " + type.getSimpleName(), e);
    }
  }

  /** The shape of a record type. */
  public static Shape of(Class<? extends Record> type) {
    Shape known = KNOWN.get(type);
    return known == null ? KNOWN.computeIfAbsent(type, t -> new Shape(type)) : known;
  }

  /** Its keys in order, without the origin. */
  public List<Field> fields() {
    return fields;
  }

  /** Keys of which exactly one is given; empty if there is no such rule. */
  public List<String> oneOf() {
    return oneOf;
  }

  /**
   * Whether things of this shape are entries with keys of their own, and not points or the like.
   */
  public boolean hasOrigin() {
    return origin.isPresent();
  }

  /** Where a thing of this shape stands. */
  public Origin origin(Record thing) {
    return (Origin) get(origin.orElseThrow(), thing);
  }

  /** Name of a type as a record would write it: {@code RunEnd} is {@code run_end}. */
  public static String nameOf(Class<?> type) {
    return snakeCase(type.getSimpleName()).substring(1);
  }

  /** The field of the given key, if there is one. */
  public Optional<Field> field(String key) {
    return Optional.ofNullable(fieldByKey.get(key));
  }

  /**
   * The same, looked for first where it is likely: most files give keys in the order of the fields.
   *
   * @param likely index of the field that may have the key; any number
   */
  public Optional<Field> field(String key, int likely) {
    if (likely >= 0 && likely < fields.size() && fields.get(likely).key().equals(key)) {
      return Optional.of(fields.get(likely));
    }
    return field(key);
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
      return constructor.newInstance(arguments.toArray());
    } catch (InvocationTargetException e) {
      throw new IllegalArgumentException(e.getCause().getMessage(), e.getCause());
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot make " + type.getSimpleName(), e);
    }
  }

  private static Object get(RecordComponent component, Record thing) {
    try {
      return component.getAccessor().invoke(thing);
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("cannot read " + component.getName(), e);
    }
  }

  private static Field field(int index, RecordComponent component) {
    Class<?> type = component.getType();
    String key = snakeCase(component.getName());
    if (type == Optional.class) {
      return new Field(index, key, Presence.OPTIONAL, inner(component), component);
    } else if (type == List.class) {
      return new Field(index, key, Presence.LIST, inner(component), component);
    }
    return new Field(
        index, key, Presence.REQUIRED, type == int.class ? Integer.class : type, component);
  }

  private static Class<?> inner(RecordComponent component) {
    Type generic = ((ParameterizedType) component.getGenericType()).getActualTypeArguments()[0];
    return (Class<?>) generic;
  }

  private static String snakeCase(String name) {
    StringBuilder snake = new StringBuilder();
    for (int i = 0; i < name.length(); i++) {
      char c = name.charAt(i);
      if (c >= 'A' && c <= 'Z') {
        snake.append('_');
      }
      snake.append(c);
    }
    return snake.toString().toLowerCase(Locale.ROOT);
  }
}
