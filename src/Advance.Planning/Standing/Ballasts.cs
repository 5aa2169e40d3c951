using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>Asks for the ballast of what stands.</summary>
internal static class Ballasts
{
    /// <summary>Each piece of it.</summary>
    public static void Ask(Pieces pieces, IReadOnlyList<BallastRow> rows, Address address, string name, Spot? spot)
    {
        foreach (var row in rows)
        {
            for (var number = 1; number <= row.Count; number++)
            {
                pieces.Ask(address / "ballast" / number, $"{name} ballast", row.Item, from: null, spot, row.At);
            }
        }
    }
}
