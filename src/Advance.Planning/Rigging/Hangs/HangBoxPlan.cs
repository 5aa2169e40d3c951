using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A box of a hang, how it is turned, and what the joint above it carries.</summary>
/// <param name="Box">The box.</param>
/// <param name="Splay">How much further down it looks than what it hangs on.</param>
/// <param name="Tilt">How far down it looks.</param>
/// <param name="Weight">With its joint and what comes with it, with margin.</param>
/// <param name="Below">What hangs on the joint above it, itself among that.</param>
/// <param name="Rear">Pull of the rear link while it moves; negative where it pushes. Of a hang that is pulled back, then or before, whichever is more.</param>
/// <param name="Front">On the front pins while it moves, likewise.</param>
public sealed record HangBoxPlan(
    StackedBox Box, Figure<Angle> Splay, Figure<Angle> Tilt, Figure<Mass> Weight, Figure<Mass> Below, Figure<Force> Rear, Figure<Force> Front)
{
    /// <summary>The most that its rear link may bear, either way; unknown where nobody says.</summary>
    public required Figure<Force> RearLimit { get; init; }

    /// <summary>The most that its front pins may bear; unknown where nobody says.</summary>
    public required Figure<Force> FrontLimit { get; init; }

    /// <summary>Where it is in the side view; null where nobody knows.</summary>
    public PlacedBox? At { get; init; }
}
