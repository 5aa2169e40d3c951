using System.Collections;
using System.Globalization;
using System.Text.RegularExpressions;
using Advance.Domain.Wording;
using Advance.Planning;
using Advance.Sheets;
using Advance.Sheets.Views;
using UnitsNet;

namespace Advance.Golden;

/// <summary>A figure of the plan is the same figure on every sheet: each cell that carries an address prints what the plan states there.</summary>
public sealed partial class AddressTests
{
    public static TheoryData<string> Gigs => Samples.Gigs;

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_sheet_gives_another_value_than_the_plan_for_an_address(string gig)
    {
        var isUs = Samples.Plan(gig).Brief.Company.Units == Domain.Wording.UnitSystem.UsCustomary;
        var stated = Samples.Plan(gig).Figures.GroupBy(figure => figure.Address.Text, StringComparer.Ordinal).ToDictionary(group => group.Key, group => group.First(), StringComparer.Ordinal);
        var wrong = Printed(gig).Where(one => !Says(one.Cell, stated[one.Cell.Address!], isUs && one.Sheet != "workings")).Select(one => $"{one.Sheet}: {one.Cell.Address} is {one.Cell.Text}");
        Assert.Empty(wrong);
    }

    [Theory]
    [MemberData(nameof(Gigs))]
    public void No_address_is_stated_twice(string gig)
    {
        var twice = Samples.Plan(gig).Figures.GroupBy(figure => figure.Address.Text, StringComparer.Ordinal).Where(group => group.Count() > 1).Select(group => group.Key);
        Assert.Empty(twice);
    }

    // Without this the first test could hold because nothing is looked at.
    [Theory]
    [MemberData(nameof(Gigs))]
    public void Many_addresses_are_printed_on_more_than_one_sheet(string gig)
    {
        var shared = Printed(gig).GroupBy(one => one.Cell.Address, StringComparer.Ordinal).Count(group => group.Select(one => one.Sheet).Distinct(StringComparer.Ordinal).Count() > 1);
        Assert.InRange(shared, 100, int.MaxValue);
    }

    private static bool Says(Cell cell, Stated stated, bool isUs)
    {
        if (Number().Match(cell.Text) is not { Success: true } printed)
        {
            return stated.Value is null;
        }

        if (stated.Value is null)
        {
            return false;
        }

        if (isUs && InUs(cell.Text, printed, stated.Value) is { } agrees)
        {
            return agrees;
        }

        var (amount, unit, digit) = Read(printed);
        var (truth, _, _) = Read(Number().Match(Precisely.Say(stated.Value)));

        // A column without units is in the plan's own unit, in thousandths or in thousands of it.
        return Near(amount, truth, digit) || (unit.Length == 0 && (Near(amount / 1000, truth, digit / 1000) || Near(amount * 1000, truth, digit * 1000)));
    }

    // Of what is said in other units there; null for what is said alike. Feet and inches go to half an inch.
    private static bool? InUs(string text, Match printed, object value)
    {
        var feet = FeetAndInches().Match(text);
        var amount = double.Parse(printed.Groups["number"].Value, CultureInfo.InvariantCulture);
        var digits = printed.Groups["number"].Value;
        var digit = digits.Contains('.', StringComparison.Ordinal) ? Math.Pow(10, digits.IndexOf('.', StringComparison.Ordinal) + 1 - digits.Length) : 1;
        return value switch
        {
            Length length when feet.Success => Near(Part(feet, "feet") + (Part(feet, "inches") / 12), Math.Abs(length.Feet), 0.5 / 12),
            Length length => Near(amount, length.Feet, digit) || Near(amount, length.Inches, digit),
            Mass mass => Near(amount, mass.Pounds, digit),
            Force force => Near(amount, force.PoundsForce, digit),
            Torque torque => Near(amount, torque.PoundForceFeet, digit),
            Speed speed => Near(amount, speed.MilesPerHour, digit) || Near(amount, speed.FeetPerSecond, digit) || Near(amount, speed.FeetPerMinute, digit),
            Area area => Near(amount, area.SquareFeet, digit),
            Pressure pressure => Near(amount, pressure.PoundsForcePerSquareFoot, digit),
            Temperature temperature => Near(amount, temperature.DegreesFahrenheit, digit),
            double number when text.EndsWith("ft³", StringComparison.Ordinal) => Near(amount, Volume.FromCubicMeters(number).CubicFeet, digit),
            _ => null,
        };
    }

    private static double Part(Match match, string part) => match.Groups[part].Success ? double.Parse(match.Groups[part].Value, CultureInfo.InvariantCulture) : 0;

    private static bool Near(double printed, double truth, double digit) => Math.Abs(printed - truth) <= digit + (1e-5 * Math.Abs(truth));

    // In the plan's unit, with what its last digit is worth: what must not look safer than it is, is cut and not rounded.
    private static (double Amount, string Unit, double Digit) Read(Match number)
    {
        var digits = number.Groups["number"].Value;
        var unit = number.Groups["unit"].Value;
        var scale = unit switch
        {
            "mA" or "ms" or "mΩ" or "mm" => 1e-3,
            "min" => 60,
            "h" => 3600,
            "kW" or "kVA" or "kvar" or "kA" or "kN" or "kNm" => 1e3,
            "l" => 1e-3,
            _ => 1,
        };
        var decimals = digits.Contains('.', StringComparison.Ordinal) ? digits.Length - digits.IndexOf('.', StringComparison.Ordinal) - 1 : 0;
        return (double.Parse(digits, CultureInfo.InvariantCulture) * scale, unit, Math.Pow(10, -decimals) * scale);
    }

    private static List<(string Sheet, Cell Cell)> Printed(string gig)
    {
        var composed = Composer.Compose(Samples.Plan(gig), PackageRequest.Everything, CompanyFolder.None);
        return [.. composed.Views.SelectMany(view => CellsOf(view.View).Where(cell => cell.Address is not null).Select(cell => (view.Template, cell)))];
    }

    private static IEnumerable<Cell> CellsOf(object? view) => view switch
    {
        null or string => [],
        Cell cell => [cell],
        IEnumerable list => list.Cast<object?>().SelectMany(CellsOf),
        _ when view.GetType().Assembly == typeof(Cell).Assembly => view.GetType().GetProperties().SelectMany(property => CellsOf(property.GetValue(view))),
        _ => [],
    };

    [GeneratedRegex(@"(?<number>-?[0-9]+(\.[0-9]+)?)[\u00A0 ]?(?<unit>[A-Za-zΩ°%]*)", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex Number();

    [GeneratedRegex("^(?<feet>[0-9]+)'( (?<inches>[0-9]+(\\.[0-9]+)?)\")?|^(?<inches>[0-9]+(\\.[0-9]+)?)\"", RegexOptions.ExplicitCapture, 1000)]
    private static partial Regex FeetAndInches();
}
