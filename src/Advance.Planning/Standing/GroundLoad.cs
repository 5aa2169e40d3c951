using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What something that stands does to what it stands on.</summary>
/// <param name="Weight">Of all of it, with the margins of how it is known.</param>
/// <param name="Off">How far off the middle of its base that weight acts, in the stated wind; nothing indoors.</param>
/// <param name="MostOff">How far it may be: a third of the base.</param>
/// <param name="Pressure">Under what is left of the base; null where less than a third is, or where it stands on feet of their own.</param>
/// <param name="Foot">On the foot that gets most; null where it stands on its whole underside.</param>
/// <param name="UnderFoot">Under that foot; null where nobody knows what a foot covers.</param>
public sealed record GroundLoad(
    Figure<Mass> Weight, Figure<Length> Off, Figure<Length> MostOff, Figure<Pressure>? Pressure, Figure<Force>? Foot, Figure<Pressure>? UnderFoot)
{
    /// <summary>What the ground gets most of: under its base, or under a foot; null where nobody knows.</summary>
    public Figure<Pressure>? Most => UnderFoot ?? Pressure;

    /// <summary>Its numbers.</summary>
    public IEnumerable<Stated> Figures(Address address, string name)
    {
        yield return Stated.Of(address / "weight", $"{name}, weight on the ground", Weight);
        yield return Stated.Of(address / "off-centre", $"{name}, how far off the middle it acts", Off);
        yield return Stated.Of(address / "most-off-centre", $"{name}, how far off the middle it may act", MostOff);
        if (Pressure is { } pressure)
        {
            yield return Stated.Of(address / "pressure", $"{name}, pressure on the ground", pressure);
        }

        if (Foot is { } foot)
        {
            yield return Stated.Of(address / "foot", $"{name}, force on one foot", foot);
        }

        if (UnderFoot is { } under)
        {
            yield return Stated.Of(address / "under-foot", $"{name}, pressure under one foot", under);
        }
    }
}
