using UnitsNet;

namespace Advance.Domain.Wording;

/// <summary>The units of one system, by name, with what stands in a column under each name. The one place where paper's units are settled.</summary>
public sealed class PaperUnits
{
    // Slower things are hoists, which nobody says in miles.
    private const double Slow = 0.5;

    // Faster than this is sound, whose way is said in feet.
    private const double Sound = 100;

    private readonly bool isMetric;

    private PaperUnits(UnitSystem units) => isMetric = units == UnitSystem.Metric;

    /// <summary>Those of a system.</summary>
    public static PaperUnits Of(UnitSystem units) => new(units);

    /// <summary>Of a force.</summary>
    public string Force => isMetric ? "kN" : "lbf";

    /// <summary>Of a moment that a truss or a beam bears.</summary>
    public string Moment => isMetric ? "kNm" : "lbf·ft";

    /// <summary>Of a wind.</summary>
    public string Wind => isMetric ? "m/s" : "mph";

    /// <summary>Of an area.</summary>
    public string Area => isMetric ? "m²" : "ft²";

    /// <summary>Of a load on an area.</summary>
    public string Bearing => isMetric ? "kN/m²" : "lb/ft²";

    /// <summary>Of the room that a load takes.</summary>
    public string Room => isMetric ? "m³" : "ft³";

    /// <summary>Of fuel.</summary>
    public string Fuel => isMetric ? "l" : "gal";

    /// <summary>Decimals of a force or a moment in its unit.</summary>
    public int ForceDecimals => isMetric ? 2 : 0;

    /// <summary>A force in its unit.</summary>
    public double In(Force force) => isMetric ? force.Kilonewtons : force.PoundsForce;

    /// <summary>A moment in its unit.</summary>
    public double In(Torque moment) => isMetric ? moment.KilonewtonMeters : moment.PoundForceFeet;

    /// <summary>A wind in its unit.</summary>
    public double In(Speed wind) => isMetric ? wind.MetersPerSecond : wind.MilesPerHour;

    /// <summary>An area in its unit.</summary>
    public double In(Area area) => isMetric ? area.SquareMeters : area.SquareFeet;

    /// <summary>A load on an area in its unit.</summary>
    public double In(Pressure pressure) => isMetric ? pressure.KilonewtonsPerSquareMeter : pressure.PoundsForcePerSquareFoot;

    /// <summary>Room in its unit.</summary>
    public double In(Volume room) => isMetric ? room.CubicMeters : room.CubicFeet;

    /// <summary>Fuel in its unit.</summary>
    public double FuelIn(Volume fuel) => isMetric ? fuel.Liters : fuel.UsGallons;

    internal string Say(Force force) => $"{Numbers.Plain(In(force), ForceDecimals)} {Force}";

    internal string Say(Pressure pressure) => $"{Numbers.Plain(In(pressure), isMetric ? 2 : 0)} {Bearing}";

    internal string Say(Torque torque) => isMetric && Math.Abs(torque.NewtonMeters) < 1000
        ? $"{Numbers.Plain(torque.NewtonMeters, 0)} N·m"
        : $"{Numbers.Plain(In(torque), ForceDecimals)} {Moment}";

    internal string Say(Speed speed) => (isMetric, Math.Abs(speed.MetersPerSecond)) switch
    {
        (true, _) => $"{Numbers.Plain(speed.MetersPerSecond, 1)} m/s",
        (_, < Slow) => $"{Numbers.Plain(speed.FeetPerMinute, 0)} ft/min",
        (_, > Sound) => $"{Numbers.Plain(speed.FeetPerSecond, 0)} ft/s",
        _ => $"{Numbers.Plain(speed.MilesPerHour, 0)} mph",
    };

    internal string Say(Temperature temperature) => isMetric ? $"{Numbers.Plain(temperature.DegreesCelsius, 1)} °C" : $"{Numbers.Plain(temperature.DegreesFahrenheit, 0)} °F";

    internal string Say(Area area) => $"{Numbers.Plain(In(area), isMetric ? 2 : 1)} {Area}";

    internal string Say(Volume volume) => $"{Numbers.Plain(In(volume), isMetric ? 2 : 0)} {Room}";

    internal string Say(FineLength fine) => isMetric ? $"{Numbers.Plain(fine.Length.Millimeters, 1)} mm" : $"{Numbers.Plain(fine.Length.Inches, 1)}\"";
}
