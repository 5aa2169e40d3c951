using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/truss-rolls</c></summary>
internal sealed class TrussRolls : Rule<TrussRolls.Case>
{
    public override string Name => "rigging/truss-rolls";

    public override Severity Severity => Severity.Stop;

    public override string Catches => "What a truss carries hangs so far off its centre line that it rolls over between its chords.";

    public override string Why => "It turns about its chains, and clamps and pins are loaded sideways.";

    public override string Cures => "Balance it, or hang it from both chords on spreaders.";

    public override Publication Source => Handbook.Statics.Equilibrium;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.Offset.Value is { Meters: not 0 }).Select(truss => new Case(truss));

    protected override Said Say(Case found) => found.Verdict == Verdict.Fails
        ? new($"{found.Truss.Name}: all of it hangs {Off(found)} off its centre line, and its chords are {found.Truss.Placed.Kind!.Truss!.Width!.Value.Value} apart.", "Balance it, or hold it by both chords.", $"{Off(found)}")
        : new($"{found.Truss.Name}: all of it hangs {Off(found)} off its centre line, and nobody knows how wide it is.", "Write the width of its kind.", $"unknown");

    private static UnitsNet.Length Off(Case found) => UnitsNet.Length.FromMeters(Math.Abs(found.Truss.Offset.Value!.Value.Meters));

    private static Verdict Judge(TrussPlan truss) => truss.Placed.Kind?.Truss?.Width is not { IsKnown: true } width ? Verdict.CannotBeJudged
        : Math.Abs(truss.Offset.Value!.Value.Meters) <= width.Value.Meters / 2 ? Verdict.Holds : Verdict.Fails;

    internal sealed record Case(TrussPlan Truss) : Judgement(Truss.Address / "rolls", Truss.Placed.Truss.At, Judge(Truss), Truss.Offset.RestsOn);
}
