namespace Advance.Reading.Phrases;

/// <summary>All units that are read, with what they are worth in base units (SI, as UnitsNet counts them, but degrees and percent).</summary>
internal static class UnitKinds
{
    private const double Inch = 0.0254;
    private const double Pound = 0.45359237;
    private const double StandardGravity = 9.80665;
    private const double PoundForce = Pound * StandardGravity;

    /// <summary>In metres.</summary>
    public static readonly UnitKind Length = new("a length", new("m", 1), new("cm", 0.01), new("mm", 0.001), new("km", 1000), new("ft", 12 * Inch), new("in", Inch));

    /// <summary>In kilograms.</summary>
    public static readonly UnitKind Mass = new("a weight", new("kg", 1), new("g", 0.001), new("t", 1000), new("lb", Pound));

    /// <summary>In amperes.</summary>
    public static readonly UnitKind Current = new("a current", new("A", 1), new("mA", 0.001), new("kA", 1000));

    /// <summary>In volts.</summary>
    public static readonly UnitKind Potential = new("a voltage", new("V", 1), new("mV", 0.001), new("kV", 1000));

    /// <summary>In watts.</summary>
    public static readonly UnitKind Power = new("a power", new("W", 1), new("kW", 1000), new("MW", 1e6, IsOffered: false));

    /// <summary>In volt-amperes.</summary>
    public static readonly UnitKind ApparentPower = new("an apparent power", new("VA", 1), new("kVA", 1000));

    /// <summary>In hertz.</summary>
    public static readonly UnitKind Frequency = new("a frequency", new("Hz", 1), new("kHz", 1000), new("MHz", 1e6), new("GHz", 1e9));

    /// <summary>In seconds.</summary>
    public static readonly UnitKind Duration = new("a length of time", new("s", 1), new("ms", 0.001), new("us", 1e-6, IsOffered: false), new("min", 60), new("h", 3600));

    /// <summary>In degrees.</summary>
    public static readonly UnitKind Angle = new("an angle", new("deg", 1), new("°", 1, IsOffered: false));

    /// <summary>In percent.</summary>
    public static readonly UnitKind Ratio = new("a percentage", new("%", 1), new("percent", 1, IsOffered: false));

    /// <summary>In degrees Celsius.</summary>
    public static readonly UnitKind Temperature = new(
        "a temperature", new("C", 1), new("°C", 1, IsOffered: false), new("F", 5 / 9.0, -160 / 9.0), new("°F", 5 / 9.0, -160 / 9.0, IsOffered: false));

    /// <summary>In metres per second.</summary>
    public static readonly UnitKind Speed = new(
        "a speed", new("m/s", 1), new("m/min", 1 / 60.0), new("km/h", 1 / 3.6), new("mph", 1609.344 / 3600), new("ft/min", 12 * Inch / 60));

    /// <summary>In newtons.</summary>
    public static readonly UnitKind Force = new("a force", new("kN", 1000), new("N", 1), new("lbf", PoundForce));

    /// <summary>In kilograms: a force is taken as what weighs so much at standard gravity.</summary>
    public static readonly UnitKind Load = new("a load", new("kg", 1), new("kN", 1000 / StandardGravity), new("t", 1000), new("lb", Pound));

    /// <summary>In newton metres.</summary>
    public static readonly UnitKind Moment = new("a moment", new("kNm", 1000), new("Nm", 1), new("lbft", PoundForce * 12 * Inch));

    /// <summary>In newton square metres.</summary>
    public static readonly UnitKind BendingStiffness = new("a stiffness in bending", new("kNm2", 1000), new("Nm2", 1));

    /// <summary>In newtons per metre.</summary>
    public static readonly UnitKind Stiffness = new("a stiffness", new("kN/m", 1000), new("N/mm", 1000), new("N/m", 1), new("lbf/in", PoundForce / Inch));

    /// <summary>In newtons per square metre. Kilograms and pounds on an area are taken as their weight at standard gravity.</summary>
    public static readonly UnitKind AreaLoad = new(
        "a load on an area", new("kN/m2", 1000), new("N/m2", 1), new("kg/m2", StandardGravity), new("lb/ft2", PoundForce / (144 * Inch * Inch)), new("Pa", 1), new("kPa", 1000));

    /// <summary>In kilograms per metre.</summary>
    public static readonly UnitKind MassPerLength = new("a weight per length", new("kg/m", 1), new("g/m", 0.001), new("lb/ft", Pound / (12 * Inch)));

    /// <summary>In ohms.</summary>
    public static readonly UnitKind Resistance = new("a resistance", new("ohm", 1), new("Ω", 1, IsOffered: false), new("mohm", 0.001), new("kohm", 1000));

    /// <summary>In square metres.</summary>
    public static readonly UnitKind Area = new("an area", new("m2", 1), new("mm2", 1e-6), new("ft2", 144 * Inch * Inch));

    /// <summary>In decibels.</summary>
    public static readonly UnitKind Level = new("a level", new Unit("dB", 1));

    /// <summary>In cubic metres.</summary>
    public static readonly UnitKind Volume = new("a volume", new("l", 0.001), new("m3", 1));

    /// <summary>Every kind.</summary>
    public static IReadOnlyList<UnitKind> All =>
    [
        Length, Mass, Current, Potential, Power, ApparentPower, Frequency, Duration, Angle, Ratio, Temperature, Speed, Force, AreaLoad,
        MassPerLength, Resistance, Area, Level, Volume, Load, Moment, BendingStiffness, Stiffness,
    ];

    /// <summary>How units are also called, with how they are written here.</summary>
    public static IReadOnlyList<(string Long, string Symbol)> LongNames =>
    [
        ("metre", "m"), ("metres", "m"), ("meter", "m"), ("meters", "m"), ("mtr", "m"), ("mtrs", "m"), ("centimetres", "cm"), ("millimetres", "mm"),
        ("foot", "ft"), ("feet", "ft"), ("inch", "in"), ("inches", "in"), ("kilo", "kg"), ("kilos", "kg"), ("kgs", "kg"), ("kilograms", "kg"),
        ("tonne", "t"), ("tonnes", "t"), ("lbs", "lb"), ("pound", "lb"), ("pounds", "lb"), ("amp", "A"), ("amps", "A"), ("ampere", "A"),
        ("volt", "V"), ("volts", "V"), ("watt", "W"), ("watts", "W"), ("kilowatt", "kW"), ("kilowatts", "kW"), ("hertz", "Hz"), ("sec", "s"),
        ("secs", "s"), ("second", "s"), ("seconds", "s"), ("mins", "min"), ("minute", "min"), ("minutes", "min"), ("m", "min"), ("hr", "h"), ("hrs", "h"),
        ("hour", "h"), ("hours", "h"), ("degree", "deg"), ("degrees", "deg"), ("pc", "%"), ("ohms", "ohm"), ("litre", "l"), ("litres", "l"), ("liter", "l"), ("liters", "l"),
    ];
}
