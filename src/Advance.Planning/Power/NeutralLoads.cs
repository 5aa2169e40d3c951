using Advance.Handbook;

namespace Advance.Planning;

/// <summary>The loads of a neutral in one show state, as numbers.</summary>
/// <param name="Sum">Those whose line is known.</param>
/// <param name="Anywhere">Amperes and harmonics of those whose line nobody knows: they add by magnitude.</param>
internal sealed record NeutralLoads(PhasorSum Sum, IReadOnlyList<(double Amperes, Spectrum Spectrum)> Anywhere)
{
    /// <summary>Amperes in the neutral with only these lines on, and the direction of the fundamental.</summary>
    public (double Amperes, double Direction) With(IReadOnlyCollection<int> on)
    {
        var some = Sum.WithOnly(on);
        var orders = some.Orders.Concat(Anywhere.SelectMany(one => one.Spectrum.Orders)).Distinct();
        var first = some.NeutralAtMost;
        return (Math.Sqrt(orders.Sum(order => Square((order == 1 ? first.Length : some.NeutralOf(order)) + AnywhereOf(order)))), first.Direction);
    }

    private double AnywhereOf(int order) => Anywhere.Sum(one => one.Spectrum.FundamentalOf(one.Amperes) * one.Spectrum.Share(order));

    private static double Square(double value) => value * value;
}
