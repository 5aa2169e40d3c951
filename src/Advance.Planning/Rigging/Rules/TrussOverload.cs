using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/truss-overload</c></summary>
internal sealed class TrussOverload : Rule<TrussOverload.Case>
{
    public override string Name => "rigging/truss-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A truss bends or shears more than its maker allows, level or as uneven as it is reckoned while it moves, or with what wind, lines and leaning chains add sideways and from end to end.";

    public override string Why => "Truss folds without warning.";

    public override string Cures => "One more pick, picks nearer to the loads, less weight, or a stronger truss.";

    public override Publication Source => Handbook.RiggingStandards.Truss;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.Study is not null).Select(truss => new Case(truss));

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Truss.Name}: {Missing(found.Truss)} by its maker is not known.", "Write moment and shear, or the maker's table of spans, to its kind in the stock; of three chords the hogging moment, too.", $"unknown")
        : new($"{found.Truss.Name}: {found.Worst!}.", "One more pick, picks nearer to the loads, or less weight.", found.Worst!);

    private static string Missing(TrussPlan truss) => truss.Sagging.Allowed.Value is null || truss.Shear.Allowed.Value is null ? "what it bears of moment and shear" : "what it bears hogging, over a pick,";

    internal sealed record Case(TrussPlan Truss) : Judgement(Truss.Address / "bends", Truss.Placed.Truss.At, Judge(Truss), Truss.RestsOn)
    {
        /// <summary>What is too much, in words; null where nothing is.</summary>
        public Words? Worst => WorstOf(Truss);

        private static Verdict Judge(TrussPlan truss) => WorstOf(truss) is not null ? Verdict.Fails
            : truss.Sagging.Allowed.Value is null || truss.Shear.Allowed.Value is null || (truss.Hogging.Allowed.Value is null && truss.Hogging.Worst.Value is not { NewtonMeters: 0 }) ? Verdict.CannotBeJudged : Verdict.Holds;

        private static Words? WorstOf(TrussPlan truss) =>
            Over("sagging moment", truss.Sagging) ?? Over("hogging moment", truss.Hogging) ?? Over("shear", truss.Shear) ?? TogetherOf(truss) ?? SidewaysOf(truss) ?? NodeOf(truss) ?? PickOf(truss);

        private static Words? Over<T>(string what, TrussForce<T> force)
            where T : struct, IComparable<T> =>
            force.Worst.AtMost(force.Allowed) == Verdict.Fails ? Words.Of($"{what} {force.Worst.Value!.Value} of {force.Allowed.Value!.Value} ({force.Case})") : null;

        private static Words? TogetherOf(TrussPlan truss) =>
            truss.Together.Value is > 1 and var share ? Words.Of($"moment and shear together {UnitsNet.Ratio.FromDecimalFractions(share)} of what is allowed") : null;

        private static Words? SidewaysOf(TrussPlan truss) => truss.Sideways is { IsPushed: true, Together.Value: > 1 and var share }
            ? Words.Of($"what hangs, pushes sideways and presses together {UnitsNet.Ratio.FromDecimalFractions(share)} of what is allowed")
            : null;

        private static Words? NodeOf(TrussPlan truss) => truss.Placed.Kind?.Truss?.NodeLoad is { IsKnown: true } node
            && truss.Loads.Where(load => load.To is null).Select(load => load.Weight.Value).Max() is { } heaviest && heaviest > node.Value
            ? Words.Of($"{heaviest} hang in one place, and a node bears {node.Value}")
            : null;

        private static Words? PickOf(TrussPlan truss) =>
            truss.Placed.Kind?.Truss?.PickLoad is { IsKnown: true } most && truss.Picks.Select(pick => pick.Moving.Value).Max() is { } pull && pull > most.Value
            ? Words.Of($"{pull} at one pick, and it bears {most.Value}")
            : null;
    }
}
