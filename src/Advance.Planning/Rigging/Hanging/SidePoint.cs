namespace Advance.Planning;

/// <summary>A place in the side view of a hang, the frame's front pin at nothing.</summary>
/// <param name="X">m towards the audience.</param>
/// <param name="Z">m upward.</param>
public readonly record struct SidePoint(double X, double Z)
{
    /// <summary>So far along the axes of something that is tilted nose down: <c>f = (cos a, −sin a)</c>, <c>d = (−sin a, −cos a)</c>.</summary>
    /// <param name="tilt">a, rad.</param>
    /// <param name="forward">m.</param>
    /// <param name="down">m.</param>
    public SidePoint Along(double tilt, double forward, double down) =>
        new(X + (forward * Math.Cos(tilt)) - (down * Math.Sin(tilt)), Z - (forward * Math.Sin(tilt)) - (down * Math.Cos(tilt)));
}
