using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>
/// Turns what the plan knows into cells, in the units that the paper speaks. The one place where a doubt becomes a tag, and where a figure that
/// the plan states gets its address.
/// </summary>
internal sealed class Cells(Plan plan)
{
    // As many questions as a sentence bears beside it.
    private const int Few = 2;

    private static readonly Cell Cannot = new("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged };

    private readonly Speech speech = Speech.Of(plan.Brief.Company.Units);

    /// <summary>What somebody wrote; blank where nothing was, a tag where it is still open.</summary>
    public Cell Of<T>(Given<T>? given)
        where T : notnull => given is { } known ? Of(known) : Cell.Blank;

    /// <summary>What somebody wrote; a tag where it is still open.</summary>
    public Cell Of<T>(Given<T> given)
        where T : notnull
    {
        var cell = given.Is(out var value) ? Of(value) : Cell.Blank;
        return cell with { Tbc = given.Doubt is { } doubt ? Note(doubt) : null };
    }

    /// <summary>A count that was worked out; hatched where it cannot be judged.</summary>
    public Cell Of(Figure<int> figure)
    {
        var cell = figure.Value is { } value ? Cell.Number(value) : Cannot;
        return cell with { Tbc = NoteOf(figure.RestsOn), Address = plan.AddressOf(figure) };
    }

    /// <summary>A quantity that was worked out, with its unit.</summary>
    public Cell WithUnit<T>(Figure<T> figure)
        where T : struct, IComparable<T>
    {
        var cell = figure.Value is { } value ? Cell.Of(speech.Say(value)) : new Cell("unknown") { Verdict = Paper.Tree.Verdict.CannotBeJudged };
        return cell with { Tbc = NoteOf(figure.RestsOn), Address = plan.AddressOf(figure) };
    }

    /// <summary>A time that work takes, in whole minutes.</summary>
    public Cell Minutes(Figure<UnitsNet.Duration> figure)
    {
        var cell = Amount(figure, time => time.Minutes, 0);
        return cell with { Text = figure.Value is null ? cell.Text : $"{cell.Text} min", Tbc = NoteOf(figure.RestsOn) };
    }

    /// <summary>A weight without its unit, for a column of them; hatched where it is not known.</summary>
    public Cell Mass(Figure<UnitsNet.Mass> figure)
    {
        var cell = Cannot;
        if (figure.Value is { } mass)
        {
            var amount = speech.Units == UnitSystem.Metric ? mass.Kilograms : mass.Pounds;
            cell = Cell.Number(amount, Numbers.Plain(amount, amount < 1 ? 2 : 1));
        }

        return cell with { Tbc = NoteOf(figure.RestsOn), Address = plan.AddressOf(figure) };
    }

    /// <summary>A length without its unit, for a column of them; hatched where it is not known.</summary>
    public Cell Length(Figure<UnitsNet.Length> figure)
    {
        var cell = Cannot;
        if (figure.Value is { } length)
        {
            var amount = speech.Units == UnitSystem.Metric ? length.Meters : length.Feet;
            cell = Cell.Number(amount, Numbers.Plain(amount, 1));
        }

        return cell with { Tbc = NoteOf(figure.RestsOn), Address = plan.AddressOf(figure) };
    }

    /// <summary>An amount in the unit of its column; hatched where it is not known.</summary>
    public Cell Amount<T>(Figure<T> figure, Func<T, double> amount, int decimals)
        where T : struct, IComparable<T>
    {
        var cell = figure.Value is { } value ? Amount(amount(value), decimals) : Cannot;
        return cell with { Tbc = figure.RestsOn.Any ? "" : null, Address = plan.AddressOf(figure) };
    }

    /// <summary>An amount in the unit of its column, with a digit more where it would look like nothing.</summary>
    public static Cell Amount(double amount, int decimals)
    {
        var digits = amount > 0 && Numbers.Rounded(amount, decimals) == 0 ? decimals + 1 : decimals;
        return Cell.Number(amount, Numbers.Rounded(amount, digits).ToString($"F{digits}", System.Globalization.CultureInfo.InvariantCulture));
    }

    /// <summary>Where something stands: <c>SL 8 US 4.4</c>. The unit stands in the head, so that a line stays a line.</summary>
    public Cell Of(Spot spot)
    {
        if (speech.Units != UnitSystem.Metric)
        {
            return Cell.Of($"{Feet(spot.X, "SR", "SL")} {Feet(spot.Y, "DS", "US")}");
        }

        var place = new Domain.Places.Place.AtPoint(UnitsNet.Length.FromMeters(spot.X), UnitsNet.Length.FromMeters(spot.Y), Z: null);
        return Cell.Of(PlaceWords.Of(place, speech).Replace($" {LengthUnit}", "", StringComparison.Ordinal));
    }

    // Tenths of a foot: inches would need their own marks in each line.
    private static string Feet(double metres, string below, string above) =>
        $"{(metres < 0 ? below : above)} {Numbers.Plain(Math.Abs(UnitsNet.Length.FromMeters(metres).Feet), 1)}";

    /// <summary>Whether the paper speaks metric.</summary>
    public bool IsMetric => speech.Units == UnitSystem.Metric;

    /// <summary>A value with its unit, as the paper says it.</summary>
    public string Said(object value) => speech.Say(value);

    /// <summary>The units of the paper.</summary>
    public PaperUnits Units => speech.Paper;

    /// <summary>The unit of <see cref="Mass"/>.</summary>
    public string MassUnit => speech.Units == UnitSystem.Metric ? "kg" : "lb";

    /// <summary>The unit of <see cref="Length"/>.</summary>
    public string LengthUnit => speech.Units == UnitSystem.Metric ? "m" : "ft";

    /// <summary>The few words beside TBC: who, and by when; null where nothing is open.</summary>
    public string? NoteOf(Doubts doubts) => doubts.FirstOrDefault() is { } first ? (doubts.Count == 1 ? Note(first) : $"{doubts.Count} open") : null;

    /// <summary>Who must answer, and by when.</summary>
    public string Note(Doubt doubt) => (doubt.Who, doubt.By) switch
    {
        ({ } who, { } by) => $"{who} {speech.Say(by)}",
        ({ } who, null) => who,
        (null, { } by) => speech.Say(by),
        _ => "",
    };

    /// <summary>What stands in the head of a table whose rows were chosen together: the open questions that all of them rest on.</summary>
    public static Cell Head(Doubts doubts) =>
        doubts.Any ? Cell.Of(string.Join("; ", doubts.Select(QuestionWords.Of))) with { Tbc = "" } : Cell.Blank;

    /// <summary>The same in short, beside a sentence: the first few, and how many more there are.</summary>
    public static Cell Short(Doubts doubts) => doubts.Count > Few
        ? Cell.Of($"{string.Join("; ", doubts.Take(Few).Select(QuestionWords.Of))}; and {doubts.Count - Few} more") with { Tbc = "" }
        : Head(doubts);

    private Cell Of<T>(T value)
        where T : notnull => value switch
        {
            int whole => Cell.Number(whole),
            Moment moment => moment.IsNextDay ? Cell.Of(moment.ToString()) : Cell.Time(new TimeOnly(moment.Minutes / 60, moment.Minutes % 60)),
            Domain.Places.Place place => Cell.Of(PlaceWords.Of(place, speech)),
            Domain.Places.HeightFrom height => Cell.Of(PlaceWords.Of(height, speech)),
            Domain.Places.Size size => Cell.Of(PlaceWords.Of(size, speech)),
            Owner owner => Cell.Of(OwnerWords.Of(owner)),
            Supply supply => Cell.Of(supply.ToString()),
            _ => Cell.Of(speech.Say(value)),
        };
}
