package wallbook.quantity;

/**
 * A physical quantity with its unit in the type. The permitted types are all that a result, a
 * record or a document can hold; how each is printed for a reader is decided in {@code wording}.
 */
public sealed interface Quantity
    permits Angle,
        Area,
        Count,
        Current,
        DataRate,
        Decibels,
        Delay,
        Diameter,
        Factor,
        Force,
        Frequency,
        Length,
        LinearAttenuation,
        LinearForce,
        LinearMass,
        LinearResistance,
        Power,
        PowerLevel,
        Ratio,
        Resistance,
        SignalLevel,
        TapedLength,
        Temperature,
        Voltage,
        Wavelength {}
