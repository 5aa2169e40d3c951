using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>How a mix, or one half of a stereo one, gets to what it is heard with.</summary>
/// <param name="Pieces">In the order they are fed: the first from the port, each other from the one before.</param>
/// <param name="Input">The input of the first piece, from 1; null where it takes no other half, or has no input for this one.</param>
/// <param name="Fed">How many of the pieces get the signal.</param>
/// <param name="Verdict">Whether all do; what no stock describes cannot be judged where more than its one input is asked for.</param>
internal sealed record MonitorChain(IReadOnlyList<Piece> Pieces, int? Input, int Fed, Verdict Verdict)
{
    /// <summary>The chain of a mix. Two or more pieces of a stereo mix go to its halves in turn; a single one takes both.</summary>
    public static MonitorChain Of(PatchReturn mix)
    {
        if (mix.Heard.Count == 0)
        {
            return new MonitorChain([], mix.Row.Numbers.Count > 1 ? mix.Half + 1 : null, Fed: 0, Verdict.CannotBeJudged);
        }

        var halves = mix.Row.Numbers.Count;
        return mix.Heard.Count < halves
            ? Shared(mix.Heard[mix.Half % mix.Heard.Count], (mix.Half / mix.Heard.Count) + 1)
            : Own([.. mix.Heard.Where((_, index) => index % halves == mix.Half)]);
    }

    // One piece takes several halves, each into an input of its own. In-ears of an act, which no stock describes, have as many as are asked for.
    private static MonitorChain Shared(Piece piece, int input)
    {
        var has = MicLine.InputsOf(piece.Kind);
        return has is { } inputs && inputs.Count < input
            ? new MonitorChain([piece], Input: null, Fed: 0, Verdict.Fails)
            : new MonitorChain([piece], input, Fed: 1, has is null && piece.Kind is not null ? Verdict.CannotBeJudged : Verdict.Holds);
    }

    private static MonitorChain Own(IReadOnlyList<Piece> pieces)
    {
        var verdict = Verdict.Holds;
        for (var index = 0; index < pieces.Count; index++)
        {
            var hasInput = MicLine.InputsOf(pieces[index].Kind) is not { Count: 0 };
            var link = index == 0 ? "" : MicLine.LinkOf(pieces[index - 1].Kind);
            if (!hasInput || link is null)
            {
                return new MonitorChain(pieces, Input: null, index, Verdict.Fails);
            }

            verdict = index > 0 && link.Length == 0 ? Verdict.CannotBeJudged : verdict;
        }

        return new MonitorChain(pieces, Input: null, pieces.Count, verdict);
    }
}
