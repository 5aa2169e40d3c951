using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What pushes a truss sideways and presses it from end to end, and what that asks of it besides what hangs on it.</summary>
/// <param name="Pushes">Wind and lines, each as heavy as it pushes; empty where nothing does.</param>
/// <param name="Moment">Sideways, the largest.</param>
/// <param name="Allowed">By its maker; unknown where nobody says.</param>
/// <param name="Pressed">From end to end, or pulled, by chains that lean.</param>
/// <param name="PressedAllowed">By its maker; unknown where nobody says.</param>
/// <param name="Together">What hangs, what pushes and what presses, each as a part of what is allowed; 1 is all of it.</param>
public sealed record TrussSideways(
    IReadOnlyList<CarriedLoad> Pushes, Figure<Torque> Moment, Figure<Torque> Allowed, Figure<Force> Pressed, Figure<Force> PressedAllowed, Figure<double> Together)
{
    /// <summary>How far it bows to the side; unknown where its maker does not say how stiff it is that way.</summary>
    public required Figure<Length> Bowed { get; init; }

    /// <summary>Whether anything pushes or presses it.</summary>
    public bool IsPushed => Pushes.Count > 0 || Pressed.Value is not { Newtons: 0 };
}
