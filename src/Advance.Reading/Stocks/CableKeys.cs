using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Reading.Phrases;
using Advance.Reading.Shapes;
using UnitsNet;

namespace Advance.Reading.Stocks;

/// <summary>The keys that make a kind a cable. They stand beside its other keys, so that cables fit into one table.</summary>
internal sealed class CableKeys
{
    private readonly Func<Row, string?> carries;
    private readonly Func<Row, string?> endA;
    private readonly Func<Row, string?> endB;
    private readonly Func<Row, Given<Length>?> length;
    private readonly Func<Row, string?> section;
    private readonly Func<Row, string?> neutral;
    private readonly Func<Row, string?> earth;
    private readonly Func<Row, Given<Temperature>?> insulation;
    private readonly Func<Row, Given<CableDrum>?> drum;
    private readonly Func<Row, Given<LinearDensity>?> perLength;
    private readonly Func<Row, int> cores;
    private readonly Func<Row, Given<ElectricCurrent>?> rating;
    private readonly Func<Row, Given<ElectricCurrent>?> fuse;

    public CableKeys(Keys keys)
    {
        carries = keys.Optional("carries", Written.Name, "Of a cable, what runs through: mic-line, speaker, network, mains.");
        endA = keys.Optional("end-a", Written.Name, "Of a cable, the connector at one end.");
        endB = keys.Optional("end-b", Written.Name, "Of a cable, the connector at the other.");
        length = keys.Open("length", Written.Length, "Of a cable, its made-up length.");
        section = keys.Optional("section", Written.Text, "Of a cable, conductor size or category.");
        neutral = keys.Optional("neutral", Written.Text, "Of a mains cable, the size of its neutral where that is not the size of its lines.");
        earth = keys.Optional("earth", Written.Text, "Of a mains cable, the size of its earth where that is not the size of its lines.");
        insulation = keys.Open("insulation", Written.As(Quantities.Temperature), "Of a mains cable, the temperature its insulation bears: 60 C, 75 C or 90 C.");
        drum = keys.Open("drum", Written.OneOf("cable-drum", "the drum of a cable", ("radial", CableDrum.Radial), ("radial, ventilated", CableDrum.RadialVentilated), ("1 layer", CableDrum.OneLayer), ("2 layers", CableDrum.TwoLayers), ("3 layers", CableDrum.ThreeLayers), ("4 layers", CableDrum.FourLayers)), "Of a mains cable that is left on its drum where it is too long: how it is wound on it.");
        perLength = keys.Open("weight-per-length", Written.As(Quantities.WeightPerLength), "Of a cable, for what it weighs on a truss; without it its weight over its length.");
        cores = keys.Defaulted("cores", Written.Count, 0, "Of a cable, how many cores.", "does not matter");
        rating = keys.Open("rating", Written.Current, "Of a cable, what it carries.");
        fuse = keys.Open("fuse", Written.Current, "Of a mains lead, the fuse in its plug; it protects the lead and what hangs on it.");
        keys.Together(["carries", "end-a", "end-b", "length"], ["section", "neutral", "earth", "insulation", "drum", "weight-per-length", "cores", "rating", "fuse"]);
    }

    /// <summary>The cable; null where the kind is none.</summary>
    public Cable? Of(Row row) =>
        carries(row) is { } carried && endA(row) is { } a && endB(row) is { } b && length(row) is { } made
            ? new(carried, a, b, made, section(row) ?? "", cores(row), rating(row), fuse(row)) { NeutralSection = neutral(row) ?? "", EarthSection = earth(row) ?? "", Insulation = insulation(row), Drum = drum(row), WeightPerLength = perLength(row) }
            : null;
}
