using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>What only a cable has.</summary>
/// <param name="Carries">What runs through: <c>mic-line</c>, <c>mains</c>, <c>network</c>.</param>
/// <param name="From">Connector at one end.</param>
/// <param name="To">Connector at the other.</param>
/// <param name="Length">Made-up length.</param>
/// <param name="Section">Conductor size or category, as written: <c>2.5 mm2</c>.</param>
/// <param name="Cores">How many; 0 where it does not matter.</param>
/// <param name="Rating">What it carries; null where it does not matter.</param>
/// <param name="Fuse">In its plug; null where there is none.</param>
public sealed record Cable(
    string Carries, string From, string To, Given<Length> Length, string Section, int Cores, Given<ElectricCurrent>? Rating,
    Given<ElectricCurrent>? Fuse = null)
{
    /// <summary>Of a mains cable, the size of its neutral where that is not the size of its lines; empty where it is.</summary>
    public string NeutralSection { get; init; } = "";

    /// <summary>Of a mains cable, the temperature its insulation bears, 60, 75 or 90 °C; null where nobody says, and then it is taken as 60.</summary>
    public Given<Temperature>? Insulation { get; init; }

    /// <summary>Of a mains cable that stays on its drum where it is too long, how it is wound on it; null for one that is coiled by hand.</summary>
    public Given<CableDrum>? Drum { get; init; }

    /// <summary>How heavy it is, by length; null where nobody says.</summary>
    public Given<LinearDensity>? WeightPerLength { get; init; }

    /// <summary>Of a mains cable, the size of its earth where that is not the size of its lines; empty where it is.</summary>
    public string EarthSection { get; init; } = "";
}
