using UnitsNet;

namespace Advance.Planning;

/// <summary>A box of a hang, seen from its upper front pin along its own axes.</summary>
/// <param name="Weight">N, more than 0.</param>
/// <param name="Forward">Where its centre of gravity is, m towards the audience; negative behind the pin, as it mostly is.</param>
/// <param name="Down">m below the pin.</param>
/// <param name="PinToPin">From its upper front pin to its lower, m, more than 0.</param>
/// <param name="Splay">How much further down it looks than what it hangs on.</param>
public sealed record HungBox(double Weight, double Forward, double Down, double PinToPin, Angle Splay)
{
    /// <summary>How far its back is behind the pins, m, 0 or more: its lower back edge may be the lowest point of all.</summary>
    public double Behind { get; init; }

    /// <summary>How far its front is ahead of the pins, m, 0 or more.</summary>
    public double Ahead { get; init; }

    /// <summary>How far the line of the rear link that holds it is from its upper front pin, m, more than 0; null where unknown: then the joint cannot be judged.</summary>
    public double? LinkArm { get; init; }
}
