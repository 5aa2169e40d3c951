using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>A stack as its crossover sees it: subs, tops, and what parts lows from highs on the way to each.</summary>
/// <param name="Stack">The stack.</param>
/// <param name="Subs">Its subs.</param>
/// <param name="Tops">Everything else that plays.</param>
internal sealed record CrossedStack(StackPlan Stack, IReadOnlyList<DrivenBox> Subs, IReadOnlyList<DrivenBox> Tops)
{
    // A high-pass an octave below the crossover, or a low-pass an octave above it, is there to protect a box.
    private const double Octave = 2;

    /// <summary>Every stack with a known box.</summary>
    public static IEnumerable<CrossedStack> Of(Plan plan) => plan.Drive.Boxes
        .GroupBy(box => box.Stack.Address)
        .Select(boxes => new CrossedStack(boxes.First().Stack, [.. boxes.Where(box => box.Box.IsSub)], [.. boxes.Where(box => !box.Box.IsSub)]));

    /// <summary>Where the crossover was written; the stack where it was not.</summary>
    public Mark At => Stack.Stack.Crossover?.At ?? Stack.Stack.At;

    /// <summary>The open questions about it.</summary>
    public Doubts RestsOn => Doubts.Of(Stack.Stack.Crossover?.Doubt).With(Stack.RestsOn);

    /// <summary>Crossings of one kind on the way to a box, without those that only protect it.</summary>
    public IReadOnlyList<Crossing> On(DrivenBox box, Filter filter) =>
        [.. box.Crossings.Where(crossing => crossing.Filter == filter && Protects(crossing) != true)];

    /// <summary>Whether a crossing is too far off to part anything; null where that cannot be said, as nobody says where the stack is crossed.</summary>
    public bool? Protects(Crossing crossing)
    {
        if (!crossing.MayProtect)
        {
            return false;
        }

        if (crossing.At.Value is not { } at || Stack.Stack.Crossover is not { IsKnown: true } crossover)
        {
            return null;
        }

        var (set, crossed) = (at.Hertz, crossover.Value.Frequency.Hertz);
        return crossing.Filter == Filter.HighPass ? set * Octave <= crossed : set >= crossed * Octave;
    }

    /// <summary>Whether crossings beyond so many are certain; cannot be judged where one may only protect.</summary>
    public Verdict AtMost(IReadOnlyList<Crossing> crossings, int most)
    {
        var certain = crossings.Count(crossing => Protects(crossing) == false);
        return certain > most ? Verdict.Fails : crossings.Count > most ? Verdict.CannotBeJudged : Verdict.Holds;
    }
}
