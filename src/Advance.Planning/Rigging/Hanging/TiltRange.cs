using UnitsNet;

namespace Advance.Planning;

/// <summary>Between which tilts a hang may be.</summary>
/// <param name="Least">Nose down positive.</param>
/// <param name="Most">Nose down positive.</param>
public sealed record TiltRange(Angle Least, Angle Most)
{
    /// <summary>Whether a tilt lies within it.</summary>
    public bool Holds(Angle tilt) => tilt >= Least && tilt <= Most;
}
