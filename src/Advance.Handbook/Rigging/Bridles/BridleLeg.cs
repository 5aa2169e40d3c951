namespace Advance.Handbook;

/// <summary>One leg of a bridle and what it does.</summary>
/// <param name="Length">From apex to anchor, m.</param>
/// <param name="Tension">N; negative where it would have to push, which it cannot: it is slack.</param>
/// <param name="Vertical">What its anchor carries downward, N.</param>
/// <param name="Horizontal">What its anchor is pulled sideways, towards the apex, N.</param>
public sealed record BridleLeg(double Length, double Tension, double Vertical, double Horizontal)
{
    /// <summary>Angle from the horizontal, degrees: 90 hangs straight.</summary>
    public double FromHorizontal => Math.Atan2(Math.Abs(Vertical), Math.Abs(Horizontal)) * 180 / Math.PI;

    /// <summary>Whether it would have to push.</summary>
    public bool IsSlack => Tension < 0;
}
