using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>sound/crossovers-differ</c></summary>
internal sealed class CrossoversDiffer : Rule<CrossoversDiffer.Case>
{
    private const double Slack = 1e-9;

    public override string Name => "sound/crossovers-differ";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Two stacks of the same boxes, or subs and tops that stand apart on one processor, are crossed at different places or frequencies.";

    public override string Why => "What is crossed differently does not add up where both are heard.";

    public override string Cures => "Write the same crossover for both.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var stacks = CrossedStack.Of(plan).DistinctBy(crossed => crossed.Stack.Written).Where(crossed => crossed.Stack.Stack.Crossover is { IsKnown: true }).ToList();
        return stacks.SelectMany((one, index) => stacks.Skip(index + 1).Where(other => BelongTogether(one, other)).Select(other => new Case(one, other)));
    }

    protected override Said Say(Case found)
    {
        var (one, other) = (found.One.Stack.Stack, found.Other.Stack.Stack);
        var (first, second) = (one.Crossover!.Value.Value, other.Crossover!.Value.Value);
        return new(
            $"{other.Name}: crossed at {second.Frequency} in {second.Within}, and {one.Name} at {first.Frequency} in {first.Within}.",
            $"Write {first.Frequency} in {first.Within} for both.",
            $"{second.Frequency} in {second.Within}, {first.Frequency} in {first.Within}");
    }

    // The same subs under the same tops, or the subs of one stack and the tops of another on one processor.
    private static bool BelongTogether(CrossedStack one, CrossedStack other)
    {
        var isSame = Shared(one.Subs, other.Subs) && Shared(one.Tops, other.Tops);
        var isParted = (one.Tops.Count == 0 && other.Subs.Count == 0) || (one.Subs.Count == 0 && other.Tops.Count == 0);
        return isSame || (isParted && one.Subs.Concat(one.Tops).Any(box => other.Subs.Concat(other.Tops).Any(twin => IsOnOne(box, twin))));
    }

    private static bool IsOnOne(DrivenBox box, DrivenBox twin) => box.Output is { } output && twin.Output?.Device.Name == output.Device.Name;

    private static bool Shared(IReadOnlyList<DrivenBox> one, IReadOnlyList<DrivenBox> other) =>
        one.Select(box => box.Box.Piece.Item).Intersect(other.Select(box => box.Box.Piece.Item), StringComparer.Ordinal).Any();

    private static Verdict Judge(Crossover one, Crossover other)
    {
        var (first, second) = (one.Frequency.Hertz, other.Frequency.Hertz);
        return Math.Abs(first - second) <= Slack * Math.Max(first, second) && one.Within == other.Within ? Verdict.Holds : Verdict.Fails;
    }

    internal sealed record Case(CrossedStack One, CrossedStack Other) : Judgement(
        Other.Stack.Written / "crossover",
        Other.At,
        Judge(One.Stack.Stack.Crossover!.Value.Value, Other.Stack.Stack.Crossover!.Value.Value),
        One.RestsOn.With(Other.RestsOn));
}
