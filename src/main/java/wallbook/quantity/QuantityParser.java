package wallbook.quantity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.DoubleFunction;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/**
 * Reads a quantity written with its unit, as in {@code 118 ft}, {@code 6 ft 2 in}, {@code 35.9 m}
 * or {@code 150 mA}. A bare number and an unknown unit are refused with a proposal. Numbers use a
 * point; a fraction may follow whole inches ({@code 6 1/2 in}).
 */
public final class QuantityParser {
  private static final String NUMBER = "([+-]?(?:\\d{1,3}(?:,\\d{3})+|\\d+)(?:\\.\\d+)?)";
  private static final Pattern SIMPLE = Pattern.compile(NUMBER + "\\s*([^\\s\\d].*)?");
  private static final Pattern FEET_AND_INCHES =
      Pattern.compile(
          "(-?\\d+)\\s*(?:ft|')\\s*"
              + "(?:(?:(\\d+)[ -]+)?(\\d+)/(\\d+)|(\\d+(?:\\.\\d+)?))\\s*(?:in|\")");
  private static final Pattern FRACTIONAL_INCHES =
      Pattern.compile("(-?)(?:(\\d+)[ -]+)?(\\d+)/(\\d+)\\s*(?:in|\")");

  private static final Map<Class<? extends Quantity>, Map<String, DoubleFunction<Quantity>>> UNITS =
      units();

  private QuantityParser() {}

  /** What can be the matter with a text that should be a quantity. */
  public enum Reason {
    NO_NUMBER,
    NO_UNIT,
    UNKNOWN_UNIT,
    IMPOSSIBLE
  }

  /** Why a text is not a quantity of the wanted type, and what would be. */
  public static final class NotAQuantity extends Exception {
    private static final long serialVersionUID = 1L;
    private final transient Reason reason;
    private final transient List<String> units;
    private final String proposal;

    NotAQuantity(Reason reason, List<String> units, String proposal) {
      super(reason.toString());
      this.reason = reason;
      this.units = List.copyOf(units);
      this.proposal = proposal;
    }

    /** What is the matter. */
    public Reason reason() {
      return reason;
    }

    /** Units that the wanted type takes. */
    public List<String> units() {
      return units;
    }

    /** A text close to the one found that would be read; empty if none suggests itself. */
    public String proposal() {
      return proposal;
    }
  }

  /** Units accepted for a type, the most usual first. */
  public static List<String> unitsOf(Class<? extends Quantity> type) {
    return List.copyOf(UNITS.get(type).keySet());
  }

  /**
   * A regular expression for the texts that are read as the given type, for whoever describes the
   * form of a file. It keeps to what Java and ECMA-262 have in common, and lets a few impossible
   * values through, such as a fraction over nought.
   */
  public static String patternOf(Class<? extends Quantity> type) {
    String simple = NUMBER + "\\s*(?:" + String.join("|", unitsOf(type)) + ")";
    if (type != Length.class) {
      return "^" + simple + "$";
    }
    return "^(?:" + simple + "|" + FEET_AND_INCHES + "|" + FRACTIONAL_INCHES + ")$";
  }

  /**
   * The number that, with the given unit, makes the quantity; units may have an offset, as °F has.
   */
  static double in(Quantity quantity, String unit) {
    DoubleFunction<Quantity> maker = UNITS.get(quantity.getClass()).get(unit);
    double zero = magnitude(maker.apply(0));
    return (magnitude(quantity) - zero) / (magnitude(maker.apply(1)) - zero);
  }

  /** The number that a quantity holds, in its one inner scale. */
  private static double magnitude(Quantity quantity) {
    try {
      Object held = quantity.getClass().getRecordComponents()[0].getAccessor().invoke(quantity);
      return ((Number) held).doubleValue();
    } catch (ReflectiveOperationException e) {
      throw new IllegalStateException("a quantity is a record of one number", e);
    }
  }

  /**
   * Reads a text as a quantity of the given type.
   *
   * @throws NotAQuantity if the text has no number, no unit, or a unit of something else
   */
  public static <Q extends Quantity> Q parse(Class<Q> type, String text) throws NotAQuantity {
    String trimmed = text.strip();
    Map<String, DoubleFunction<Quantity>> units = UNITS.get(type);
    int digits = plainNumber(trimmed);
    DoubleFunction<Quantity> usual =
        digits == 0 ? null : units.get(trimmed.substring(digits).stripLeading());
    if (usual != null) {
      return make(type, usual, Double.parseDouble(trimmed.substring(0, digits)));
    }
    if (type == Length.class) {
      Double inches = compoundInches(trimmed);
      if (inches != null) {
        return make(type, Length::inches, inches);
      }
    }
    Matcher simple = SIMPLE.matcher(trimmed);
    if (!simple.matches()) {
      throw new NotAQuantity(Reason.NO_NUMBER, unitsOf(type), "");
    }
    String unit = simple.group(2) == null ? "" : simple.group(2).strip();
    DoubleFunction<Quantity> maker = units.get(unit);
    if (maker == null) {
      throw unit.isEmpty()
          ? new NotAQuantity(Reason.NO_UNIT, unitsOf(type), proposals(type, simple.group(1)))
          : new NotAQuantity(Reason.UNKNOWN_UNIT, unitsOf(type), proposals(type, simple.group(1)));
    }
    return make(type, maker, Double.parseDouble(simple.group(1).replace(",", "")));
  }

  /** How many letters of a text are digits with at most one point amid them. */
  private static int plainNumber(String text) {
    int end = digits(text, 0);
    if (end > 0 && end < text.length() && text.charAt(end) == '.') {
      int fraction = digits(text, end + 1);
      return fraction > end + 1 ? fraction : 0;
    }
    return end;
  }

  private static int digits(String text, int start) {
    int end = start;
    while (end < text.length() && text.charAt(end) >= '0' && text.charAt(end) <= '9') {
      end++;
    }
    return end;
  }

  private static <Q extends Quantity> Q make(
      Class<Q> type, DoubleFunction<Quantity> maker, double number) throws NotAQuantity {
    try {
      return type.cast(maker.apply(number));
    } catch (IllegalArgumentException e) {
      throw new NotAQuantity(Reason.IMPOSSIBLE, unitsOf(type), "");
    }
  }

  /** The number with the first name of each of the type's two most usual units. */
  private static String proposals(Class<? extends Quantity> type, String number) {
    return UNITS.get(type).entrySet().stream()
        .collect(
            Collectors.toMap(
                Map.Entry::getValue,
                Map.Entry::getKey,
                (first, other) -> first,
                LinkedHashMap::new))
        .values()
        .stream()
        .limit(2)
        .map(unit -> number + " " + unit)
        .collect(Collectors.joining(" / "));
  }

  private static Double compoundInches(String text) {
    Matcher compound = FEET_AND_INCHES.matcher(text);
    if (compound.matches()) {
      double feet = Double.parseDouble(compound.group(1));
      double inches =
          compound.group(5) == null
              ? inches(compound.group(2), compound.group(3), compound.group(4))
              : Double.parseDouble(compound.group(5));
      return feet * 12 + (text.startsWith("-") ? -inches : inches);
    }
    Matcher fractional = FRACTIONAL_INCHES.matcher(text);
    if (fractional.matches()) {
      double inches = inches(fractional.group(2), fractional.group(3), fractional.group(4));
      return fractional.group(1).isEmpty() ? inches : -inches;
    }
    return null;
  }

  /**
   * Whole inches and a fraction; no number for a fraction of one or more, since {@code 11/2 in} on
   * site is as likely one and a half as five and a half.
   */
  private static double inches(String whole, String numerator, String denominator) {
    double fraction = Double.parseDouble(numerator) / Double.parseDouble(denominator);
    if (!(fraction < 1)) {
      return Double.NaN;
    }
    return whole == null ? fraction : Double.parseDouble(whole) + fraction;
  }

  private static Map<Class<? extends Quantity>, Map<String, DoubleFunction<Quantity>>> units() {
    Map<Class<? extends Quantity>, Map<String, DoubleFunction<Quantity>>> all =
        new LinkedHashMap<>();
    add(all, Length.class, Length::feet, "ft", "'");
    add(all, Length.class, Length::metres, "m");
    add(all, Length.class, Length::inches, "in", "\"");
    add(all, Length.class, Length::millimetres, "mm");
    add(all, Length.class, v -> Length.metres(v / 100), "cm");
    add(all, Length.class, Length::kilometres, "km");
    add(all, Diameter.class, Diameter::inches, "in", "\"");
    add(all, Diameter.class, Diameter::millimetres, "mm");
    add(all, Area.class, Area::squareFeet, "sq ft", "ft²", "ft2");
    add(all, Area.class, Area::squareMetres, "m²", "m2", "sq m");
    add(all, Area.class, Area::squareInches, "sq in", "in²", "in2");
    add(all, Area.class, Area::squareMillimetres, "mm²", "mm2");
    add(all, Angle.class, Angle::degrees, "deg", "°", "degrees");
    add(all, Resistance.class, Resistance::ohms, "ohm", "Ω", "ohms");
    add(all, Resistance.class, v -> Resistance.ohms(v * 1000), "kohm", "kΩ");
    add(all, Decibels.class, Decibels::decibels, "dB");
    add(all, PowerLevel.class, PowerLevel::dbm, "dBm");
    add(all, SignalLevel.class, SignalLevel::dbmv, "dBmV");
    add(all, Power.class, Power::watts, "W");
    add(all, Power.class, Power::milliwatts, "mW");
    add(all, Voltage.class, Voltage::volts, "V");
    add(all, Voltage.class, Voltage::millivolts, "mV");
    add(all, Current.class, Current::milliamperes, "mA");
    add(all, Current.class, Current::amperes, "A");
    add(all, Force.class, Force::poundsForce, "lbf", "lb");
    add(all, Force.class, Force::newtons, "N");
    add(all, LinearMass.class, LinearMass::poundsPerThousandFeet, "lb/1000 ft", "lb/kft");
    add(all, LinearMass.class, LinearMass::kilogramsPerKilometre, "kg/km", "g/m");
    add(all, LinearAttenuation.class, LinearAttenuation::decibelsPerHundredFeet, "dB/100 ft");
    add(all, LinearAttenuation.class, LinearAttenuation::decibelsPerHundredMetres, "dB/100 m");
    add(all, LinearAttenuation.class, LinearAttenuation::decibelsPerKilometre, "dB/km");
    add(
        all,
        LinearResistance.class,
        LinearResistance::ohmsPerThousandFeet,
        "ohm/1000 ft",
        "Ω/1000 ft");
    add(all, LinearResistance.class, LinearResistance::ohmsPerKilometre, "ohm/km", "Ω/km");
    add(all, LinearForce.class, LinearForce::poundsForcePerFoot, "lbf/ft");
    add(all, LinearForce.class, LinearForce::newtonsPerMetre, "N/m");
    add(all, Frequency.class, Frequency::megahertz, "MHz");
    add(all, Frequency.class, Frequency::kilohertz, "kHz");
    add(all, Frequency.class, v -> Frequency.megahertz(v * 1000), "GHz");
    add(all, Frequency.class, Frequency::hertz, "Hz");
    add(all, Delay.class, Delay::nanoseconds, "ns");
    add(all, Ratio.class, Ratio::percent, "%");
    add(all, Wavelength.class, Wavelength::nanometres, "nm");
    add(all, DataRate.class, DataRate::megabitsPerSecond, "Mb/s");
    add(all, DataRate.class, DataRate::gigabitsPerSecond, "Gb/s");
    add(all, Temperature.class, Temperature::fahrenheit, "°F", "F");
    add(all, Temperature.class, Temperature::celsius, "°C", "C");
    return all;
  }

  private static void add(
      Map<Class<? extends Quantity>, Map<String, DoubleFunction<Quantity>>> all,
      Class<? extends Quantity> type,
      DoubleFunction<Quantity> maker,
      String... names) {
    for (String name : names) {
      all.computeIfAbsent(type, t -> new LinkedHashMap<>()).put(name, maker);
    }
  }
}
