using Advance.Domain.Gigs;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>What somebody wants set on outputs of a processor.</summary>
internal static class OutputShape
{
    private static readonly Shape<Polarity> Polarities = Written.OneOf("polarity", "a polarity", ("normal", Polarity.Normal), ("reversed", Polarity.Reversed));

    public static readonly RecordShape<OutputRow> It = new("output", "What is set on outputs of a processor; what is left out is worked out.", keys =>
    {
        var numbers = keys.Needed("output", Written.Numbers, "Its number, or several in a row.");
        var gain = keys.Open("gain", Written.As(Quantities.Level), "Gain.");
        var polarity = keys.Open("polarity", Polarities, "Polarity.");
        var delay = keys.Open("delay", Written.Duration, "Delay.");
        var highPass = keys.Open("high-pass", Written.As(Quantities.Frequency), "Below what the lows are taken out.");
        var lowPass = keys.Open("low-pass", Written.As(Quantities.Frequency), "Above what the highs are taken out.");
        var note = keys.Defaulted("note", Written.Text, "", "Anything else.", "nothing");
        return row => new OutputRow(numbers(row), gain(row), polarity(row), delay(row), highPass(row), lowPass(row), note(row), row.At);
    });
}
