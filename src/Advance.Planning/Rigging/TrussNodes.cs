using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Where along a truss its chords are braced: at the ends of each section, and every so far along it.</summary>
internal static class TrussNodes
{
    /// <summary>How far a place along a truss is from the nearest of them, m; null where its maker does not say how far apart they are.</summary>
    /// <param name="truss">A section of it.</param>
    /// <param name="place">From its first end, m, 0 or more.</param>
    public static double? Away(Truss truss, double place)
    {
        if (truss.Nodes is not { IsKnown: true } apart || !truss.Length.Is(out var length) || apart.Value.Meters <= 0)
        {
            return null;
        }

        var (step, within) = (apart.Value.Meters, place % length.Meters);
        var before = Math.Floor((within / step) + 1e-9) * step;
        return Math.Min(Math.Abs(within - before), Math.Min(Math.Abs(before + step - within), length.Meters - within));
    }
}
