using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>rigging/not-judged</c></summary>
internal sealed class TrussNotJudged : Rule<TrussNotJudged.Case>
{
    public override string Name => "rigging/not-judged";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Something is unknown without which nobody can say what the hoists of a truss carry.";

    public override string Why => "A truss that is not worked out is not safe: it is only not worked out.";

    public override string Cures => "Answer what it asks for.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Trusses.Where(truss => truss.IsInside != false).Select(truss => new Case(truss));

    protected override Said Say(Case found) => new($"{found.Truss.Name}: what its hoists carry cannot be worked out; not known: {string.Join(", ", Missing(found.Truss))}.", "Write that.", $"{string.Join(", ", Missing(found.Truss))}");

    private static IEnumerable<string> Missing(TrussPlan truss)
    {
        var written = truss.Placed.Truss;
        if (!written.Length.IsKnown)
        {
            yield return "its length";
        }

        if (truss.Picks.Count == 0)
        {
            yield return "where it is held";
        }

        foreach (var pick in truss.Picks.Where(pick => !pick.Placed.Pick.Along.IsKnown))
        {
            yield return $"where {pick.Name} is";
        }

        foreach (var load in truss.Loads.Where(load => load.Weight.Value is null || load.From is null))
        {
            yield return load.Weight.Value is null ? $"what {load.What} weighs" : $"where {load.What} is";
        }

        if (truss.Picks.Count > 2 && truss.Placed.Kind?.Truss?.Bending is not { IsKnown: true })
        {
            yield return "how stiff it is in bending";
        }
    }

    private static Verdict Judge(TrussPlan truss) => truss.Study is not null ? Verdict.Holds : Verdict.CannotBeJudged;

    internal sealed record Case(TrussPlan Truss) : Judgement(Truss.Address / "judged", Truss.Placed.Truss.At, Judge(Truss), Truss.RestsOn);
}
