using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>From runs to what is picked for them, with what the stock owns.</summary>
internal static class LeadPicks
{
    /// <summary>What is picked for each run, in their order.</summary>
    public static IReadOnlyList<LeadPick> Of(IReadOnlyList<RunSketch> runs, Stock stock, IReadOnlyList<Piece> pieces, Choices earlier)
    {
        var units = new OwnLeads(pieces);
        var own = runs.Select(run => units.Claim(run.Link)).ToList();
        var chains = new Dictionary<(string, LeadPlug, LeadPlug), LeadChains>();
        var kinds = new Dictionary<string, IReadOnlyList<LeadKind>>(StringComparer.Ordinal);
        var wishes = runs.Select((run, index) => Wish(run, own[index])).ToList();
        var picked = LeadPicker.Pick([.. wishes.OfType<LeadWish>()], Ready(stock, pieces));
        var next = 0;
        return [.. runs.Select((run, index) => Pick(run, own[index], wishes[index], wishes[index] is null ? null : picked[next++]))];

        LeadWish? Wish(RunSketch run, Kind? with)
        {
            var link = run.Link;
            if (run.Needed.Value is not { } needed || link.From.Connector.Length == 0 || link.To.Connector.Length == 0)
            {
                return null;
            }

            var key = (link.Carries, LeadPlug.Read(link.From.Connector), LeadPlug.Read(link.To.Connector));
            if (!kinds.TryGetValue(link.Carries, out var carrying))
            {
                kinds[link.Carries] = carrying = LeadKind.Of(stock, link.Carries);
            }

            if (!chains.TryGetValue(key, out var found))
            {
                chains[key] = found = LeadChains.Find(carrying, key.Carries, key.Item2, key.Item3);
            }

            return new LeadWish(run.Address, found, Millimetres(needed.Meters), run.Use.MostJoins.Value ?? 0, with?.Id, earlier.Of(run.Address));
        }

        static LeadPick Pick(RunSketch run, Kind? with, LeadWish? wish, LeadChain? chain)
        {
            var gap = wish is null ? RunGap.NotKnown
                : chain is not null ? RunGap.None
                : wish.Chains.Longest == 0 ? RunGap.NothingMates
                : wish.Preferred is null ? RunGap.NoneLongEnough
                : RunGap.AllTaken;
            return new LeadPick(run.Address, chain, with, gap, wish?.Chains.Longest ?? 0);
        }
    }

    // Owned, less what is out for repair and what the plan uses already, and with what comes on hire to cover a shortage.
    private static Dictionary<string, int> Ready(Stock stock, IReadOnlyList<Piece> pieces)
    {
        var used = pieces.Where(piece => piece.IsPulled).CountBy(piece => piece.Item, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        var hired = pieces.Where(ExtrasDepartment.IsCover).CountBy(piece => piece.Item, StringComparer.Ordinal).ToDictionary(StringComparer.Ordinal);
        return stock.Kinds.Values
            .Where(kind => kind.Cable is not null && kind.Owned.IsKnown)
            .ToDictionary(
                kind => kind.Id,
                kind => Math.Max(0, kind.Owned.Value - kind.OutForRepair + hired.GetValueOrDefault(kind.Id) - used.GetValueOrDefault(kind.Id)),
                StringComparer.Ordinal);
    }

    // Rounded up, but not for what is only a rounding of the sum itself.
    private static long Millimetres(double metres) => (long)Math.Ceiling((metres * 1000) - 1e-3);
}
