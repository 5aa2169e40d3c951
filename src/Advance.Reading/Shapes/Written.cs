using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Reading.Phrases;
using Advance.Reading.Tables;
using UnitsNet;

namespace Advance.Reading.Shapes;

/// <summary>The shapes that keys are declared with.</summary>
internal static class Written
{
    public static readonly Shape<string> Text = new ScalarShape<string>(Texts.Text);
    public static readonly Shape<string> Name = new ScalarShape<string>(Texts.Name);
    public static readonly Shape<string> Path = new ScalarShape<string>(Texts.Path);
    public static readonly Shape<string> Picture = new TreePathShape();
    public static readonly Shape<bool> YesNo = new ScalarShape<bool>(Choice.YesNo);
    public static readonly Shape<int> Count = new ScalarShape<int>(Counts.Count);
    public static readonly Shape<double> PowerFactor = new ScalarShape<double>(Counts.PowerFactor);
    public static readonly Shape<double> Factor = new ScalarShape<double>(Counts.Factor);
    public static readonly Shape<NumberRange> Numbers = new ScalarShape<NumberRange>(Counts.Range);

    public static readonly Shape<Length> Length = new ScalarShape<Length>(Lengths.Length);
    public static readonly Shape<Length> Offset = new ScalarShape<Length>(Quantities.Offset);
    public static readonly Shape<Size> Size = new ScalarShape<Size>(Sizes.Size);
    public static readonly Shape<HeightFrom> Height = new ScalarShape<HeightFrom>(Directions.Height);
    public static readonly Shape<Mass> Weight = new ScalarShape<Mass>(Quantities.Weight);
    public static readonly Shape<Weighed> WeighedWeight = new ScalarShape<Weighed>(Kit.Weighed);
    public static readonly Shape<ElectricCurrent> Current = new ScalarShape<ElectricCurrent>(Quantities.Current);
    public static readonly Shape<UnitsNet.Power> Power = new ScalarShape<UnitsNet.Power>(Quantities.Power);
    public static readonly Shape<Supply> Supply = new ScalarShape<Supply>(Supplies.Supply);
    public static readonly Shape<ElectricResistance> Resistance = new ScalarShape<ElectricResistance>(Quantities.Resistance);
    public static readonly Shape<Angle> Angle = new ScalarShape<Angle>(Quantities.Angle);
    public static readonly Shape<Ratio> Percentage = new ScalarShape<Ratio>(Quantities.Ratio);
    public static readonly Shape<ElectricApparentPower> ApparentPower = new ScalarShape<ElectricApparentPower>(Quantities.ApparentPower);
    public static readonly Shape<Volume> Volume = new ScalarShape<Volume>(Quantities.Volume);
    public static readonly Shape<Level> Level = new ScalarShape<Level>(Quantities.Level);
    public static readonly Shape<Duration> Duration = new ScalarShape<Duration>(Durations.Duration);

    public static readonly Shape<WrittenDate> Date = new ScalarShape<WrittenDate>(Dates.Date);
    public static readonly Shape<Moment> Time = new ScalarShape<Moment>(Moments.Moment);
    public static readonly Shape<MomentRange> TimeRange = new ScalarShape<MomentRange>(Moments.Range);
    public static readonly Shape<SetTime> SetTime = new ScalarShape<SetTime>(Moments.Set);

    public static readonly Shape<Sides> Sides = new ScalarShape<Sides>(Directions.Sides);
    public static readonly Shape<Aim> Aim = new ScalarShape<Aim>(Directions.Aim);
    public static readonly Shape<Angle> Tilt = new ScalarShape<Angle>(Directions.Tilt);
    public static readonly Shape<Place> Place = new PlaceShape();

    public static readonly Shape<CountedItem> Counted = new ScalarShape<CountedItem>(Phrases.Things.Counted);
    public static readonly Shape<CountedItem> Packing = new ScalarShape<CountedItem>(Kit.Packs);
    public static readonly Shape<PortRange> Ports = new ScalarShape<PortRange>(Phrases.Things.Port);
    public static readonly Shape<Owner> Owner = new ScalarShape<Owner>(Phrases.Things.Owner);
    public static readonly Shape<Crossover> Crossover = new ScalarShape<Crossover>(Kit.Crossover);
    public static readonly Shape<Share> Share = new ScalarShape<Share>(Kit.Share);
    public static readonly Shape<OnePer> OnePer = new ScalarShape<OnePer>(Labour.OnePer);
    public static readonly Shape<Work> Work = new ScalarShape<Work>(Labour.Work);

    /// <summary>Any other notation.</summary>
    public static Shape<T> As<T>(Phrase<T> phrase)
        where T : notnull => new ScalarShape<T>(phrase);

    /// <summary>One of a few words, each with its value.</summary>
    public static Shape<T> OneOf<T>(string name, string words, params (string Word, T Value)[] choices)
        where T : notnull => new ScalarShape<T>(Choice.Of(name, words, choices));

    /// <summary>A whole number within limits.</summary>
    public static Shape<int> Between(string name, int least, int most) => new ScalarShape<int>(Counts.Between(name, least, most));

    /// <summary>A list in brackets or with dashes; in a cell, with commas.</summary>
    public static Shape<IReadOnlyList<T>> List<T>(Shape<T> item)
        where T : notnull => new ListShape<T>(item);

    /// <summary>The same, with items that may be open.</summary>
    public static Shape<IReadOnlyList<Given<T>>> ListOfGiven<T>(Shape<T> item, int atLeast = 0)
        where T : notnull => new ListShape<Given<T>>(new GivenShape<T>(item), atLeast);

    /// <summary>Things by name.</summary>
    public static Shape<IReadOnlyList<T>> Things<T>(Shape<T> thing, int atLeast = 0)
        where T : notnull => new ThingsShape<T>(thing, atLeast);

    /// <summary>Facts by name, each of which may be open.</summary>
    public static Shape<IReadOnlyDictionary<string, Given<string>>> OpenFacts { get; } = Dictionary(new GivenShape<string>(Text));

    /// <summary>Facts by name.</summary>
    public static Shape<IReadOnlyDictionary<string, string>> Facts { get; } = Dictionary(Text);

    /// <summary>Rows as a table, a list of maps, or a file.</summary>
    public static Shape<IReadOnlyList<T>> Table<T>(RecordShape<T> row)
        where T : notnull => new TableShape<T>(row);

    /// <summary>Named things as a table, a list of maps, a file, or a map by name.</summary>
    public static TableShape<T> TableOfThings<T>(RecordShape<T> thing, string name)
        where T : notnull => new(thing, name);

    /// <summary>A value that keeps its place.</summary>
    public static Shape<Marked<T>> Marked<T>(Shape<T> inner)
        where T : notnull => new MarkedShape<T>(inner);

    private static TurnedShape<IReadOnlyList<KeyValuePair<string, T>>, IReadOnlyDictionary<string, T>> Dictionary<T>(Shape<T> fact)
        where T : notnull =>
        new(
            new ThingsShape<KeyValuePair<string, T>>(new TurnedShape<T, KeyValuePair<string, T>>(fact, (value, reader) => KeyValuePair.Create(reader.Name, value))),
            (pairs, _) => pairs.ToDictionary(StringComparer.Ordinal));
}
