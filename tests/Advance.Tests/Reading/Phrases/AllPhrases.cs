using Advance.Reading;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;

namespace Advance.Tests.Reading.Phrases;

/// <summary>Every phrase: those of the files' keys, and those that stand ready for keys to come.</summary>
internal static class AllPhrases
{
    private static readonly Phrase[] Ready =
    [
        Quantities.Weight, Quantities.Current, Quantities.Potential, Quantities.Power, Quantities.ApparentPower, Quantities.Frequency, Quantities.Angle,
        Quantities.Ratio, Quantities.Temperature, Quantities.Speed, Quantities.Force, Quantities.AreaLoad, Quantities.WeightPerLength, Quantities.Resistance,
        Quantities.Area, Quantities.Level, Quantities.Volume, Lengths.Signed, Moments.Range, Directions.Side, Directions.NumberedFrom,
    ];

    public static readonly IReadOnlyDictionary<string, Phrase> ByName = Ready.Concat(FileShapes.Names.SelectMany(name => In(FileShapes.Of(name), [])))
        .DistinctBy(phrase => phrase.Name)
        .ToDictionary(phrase => phrase.Name, StringComparer.Ordinal);

    public static TheoryData<string> Names => new(ByName.Keys.Order(StringComparer.Ordinal));

    private static IEnumerable<Phrase> In(Shape shape, HashSet<Shape> seen)
    {
        if (!seen.Add(shape))
        {
            yield break;
        }

        if (shape is IPhrased { Phrase: { } phrase })
        {
            yield return phrase;
        }

        foreach (var inner in shape.Parts.SelectMany(part => In(part, seen)))
        {
            yield return inner;
        }
    }
}
