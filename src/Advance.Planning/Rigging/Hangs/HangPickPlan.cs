using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Where the frame of a hang is held, and what that carries.</summary>
/// <param name="Pick">Hoist, point and loads, as those of a truss.</param>
/// <param name="Hole">The hole of the frame; null where nobody knows it.</param>
/// <param name="IsChosen">Whether it was chosen as the one that comes nearest to the tilt.</param>
/// <param name="Height">Of the hole above the floor.</param>
public sealed record HangPickPlan(PickPlan Pick, FrameHole? Hole, bool IsChosen, Figure<Length> Height)
{
    /// <summary>How far its chain is off plumb; unknown where the place of hole or point is.</summary>
    public Figure<Angle> OffPlumb { get; init; } = new(null, Doubts.None, Reason.Derived.It);
}
