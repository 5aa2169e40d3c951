using System.Text;
using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Wording;

/// <summary>Says values on paper in one system of units. Never looks at the culture.</summary>
public sealed class Speech
{
    /// <summary>Metres and kilograms.</summary>
    public static readonly Speech Metric = new(UnitSystem.Metric);

    /// <summary>Feet, inches and pounds.</summary>
    public static readonly Speech UsCustomary = new(UnitSystem.UsCustomary);

    // From here on a current is a fault's, and said in kA.
    private const double Large = 10_000;

    private static readonly string[] Weekdays = ["Sun", "Mon", "Tue", "Wed", "Thu", "Fri", "Sat"];
    private static readonly string[] Months = ["Jan", "Feb", "Mar", "Apr", "May", "Jun", "Jul", "Aug", "Sep", "Oct", "Nov", "Dec"];

    private Speech(UnitSystem units) => (Units, Paper) = (units, PaperUnits.Of(units));

    /// <summary>The system of units.</summary>
    public UnitSystem Units { get; }

    /// <summary>Its units by name, for the heads of columns.</summary>
    public PaperUnits Paper { get; }

    /// <summary>The speech of a system of units.</summary>
    public static Speech Of(UnitSystem units) => units == UnitSystem.Metric ? Metric : UsCustomary;

    /// <summary>A sentence with its holes filled.</summary>
    public string Say(Words words)
    {
        var text = new StringBuilder();
        foreach (var part in words.Parts)
        {
            text.Append(Say(part));
        }

        return text.ToString();
    }

    /// <summary>One value with its unit.</summary>
    /// <exception cref="NotSupportedException">A kind of value that no sheet prints yet: a bug.</exception>
    public string Say(object value) => value switch
    {
        string text => text,
        bool isSo => isSo ? "yes" : "no",
        Words words => Say(words),
        int or long or char => string.Create(System.Globalization.CultureInfo.InvariantCulture, $"{value}"),
        double number => Numbers.Plain(number, 3),
        Length length => Units == UnitSystem.Metric ? Numbers.Plain(length.Meters, 2) + " m" : FeetAndInches(length),
        Mass mass => Units == UnitSystem.Metric ? Numbers.Plain(mass.Kilograms, 1) + " kg" : Numbers.Plain(mass.Pounds, 0) + " lb",
        ElectricCurrent current => current.Amperes >= Large ? Numbers.Plain(current.Kiloamperes, 1) + " kA" : Scaled(current.Amperes, "A", "mA"),
        ElectricPotential potential => Numbers.Plain(potential.Volts, 1) + " V",
        ElectricResistance resistance => Scaled(resistance.Ohms, "Ω", "mΩ"),
        FineLength fine => Paper.Say(fine),
        Force force => Paper.Say(force),
        Pressure pressure => Paper.Say(pressure),
        Torque torque => Paper.Say(torque),
        Temperature temperature => Paper.Say(temperature),
        Power power => power.Watts >= 1000 ? Numbers.Plain((double)power.Kilowatts, 2) + " kW" : Numbers.Plain((double)power.Watts, 0) + " W",
        Frequency frequency => frequency.Hertz >= 1000 ? Numbers.Plain(frequency.Kilohertz, 2) + " kHz" : Numbers.Plain(frequency.Hertz, 1) + " Hz",
        Duration duration => duration.Seconds < 1 ? Numbers.Plain(duration.Milliseconds, 2) + " ms" : Numbers.Plain(duration.Minutes, 1) + " min",
        Angle angle => Numbers.Plain(angle.Degrees, 1) + "°",
        Ratio ratio => Numbers.Plain(ratio.Percent, 1) + " %",
        Speed speed => Paper.Say(speed),
        Area area => Paper.Say(area),
        Volume volume => Paper.Say(volume),
        Level level => Numbers.Plain(level.Decibels, 1) + " dB",
        ElectricApparentPower apparent => Numbers.Plain(apparent.Kilovoltamperes, 2) + " kVA",
        ResistancePerLength perLength => Numbers.Plain(perLength.OhmsPerMetre * 1000, 2) + " mΩ/m",
        Moment moment => moment.ToString(),
        MomentRange range => range.ToString(),
        DateOnly date => Date(date),
        WrittenDate date => Date(date),
        Mark mark => mark.ToString(),
        Figures.Address address => address.Text,
        _ => throw new NotSupportedException($"No way to say a {value.GetType().Name}."),
    };

    /// <summary><c>Sat 12 Sep 2026</c>.</summary>
    public static string Date(DateOnly date) => $"{Weekdays[(int)date.DayOfWeek]} {date.Day} {Months[date.Month - 1]} {date.Year}";

    /// <summary>A weekday, as three letters.</summary>
    public static string Weekday(DayOfWeek day) => Weekdays[(int)day];

    private static string Date(WrittenDate date) =>
        $"{(date.Weekday is { } weekday ? Weekday(weekday) + " " : "")}{date.Day} {Months[date.Month - 1]}{(date.Year is { } year ? $" {year}" : "")}";

    private static string FeetAndInches(Length length)
    {
        var halves = (long)Numbers.Rounded(length.Inches * 2, 0);
        var (feet, rest) = Math.DivRem(Math.Abs(halves), 24);
        var sign = halves < 0 ? "-" : "";
        var inches = rest % 2 == 0 ? $"{rest / 2}" : $"{rest / 2}.5";
        return rest == 0 ? $"{sign}{feet}'" : feet == 0 ? $"{sign}{inches}\"" : $"{sign}{feet}' {inches}\"";
    }

    private static string Scaled(double value, string unit, string small) =>
        value != 0 && Math.Abs(value) < 0.1 ? $"{Numbers.Plain(value * 1000, 1)} {small}" : $"{Numbers.Plain(value, 1)} {unit}";
}
