using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>stage/edge-open</c></summary>
internal sealed class EdgeOpen : Rule<EdgeOpen.Case>
{
    public override string Name => "stage/edge-open";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "An edge of a deck has neither rail nor wall, the audience does not look over it, and it is high enough to be hurt by a fall.";

    public override string Why => "People who play, carry or dance step back in the dark, and the edge behind them is the one they do not see.";

    public override string Cures => "Fit a rail and write its edge after rails, say which edges stand against-wall, or accept the edge by name.";

    public override Publication Source => new("Approved Document K, Protection from falling", "2013", "guarding where people may fall more than 380 mm", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var limit = Figure.Policy("edge-height", plan.Brief.Company.Policies.EdgeHeight);
        return plan.Stage.Edges.GroupBy(edge => edge.Together).SelectMany(edges => Judge([.. edges], limit));
    }

    protected override Said Say(Case found)
    {
        var stage = found.Edges[0].Stage.Name is "stage" ? "" : $" of {found.Edges[0].Stage.Name}";
        if (found.Edges[0].Drop.Value is not { } drop)
        {
            return new(
                $"Edges of the deck{stage}: nobody knows how high it is, so it cannot be said which of them want a rail.",
                "Write height, above floor.",
                "height unknown");
        }

        return found.Verdict == Verdict.CannotBeJudged
            ? new(
                $"Edges of the deck{stage}: {drop} high, and nobody says which of them have a rail.",
                "Write rails: the edges that have one, or none.",
                $"{drop}, rails unknown")
            : new(
                $"{Capital(found.Edges[0].Name)}{stage}: {drop} high without a rail; from {found.Limit.Value ?? default} on it wants one.",
                "Fit a rail there, or accept the edge.",
                $"{drop}");
    }

    // What is not known of several edges has one cause and is said once.
    private static IEnumerable<Case> Judge(List<StageEdge> edges, Figure<Length> limit)
    {
        var isLow = limit.AtMost(edges[0].Drop) == Verdict.Fails;
        var open = edges.Where(edge => !isLow && edge.State is EdgeState.Open or EdgeState.NotSaid).ToLookup(edge => edge.State == EdgeState.NotSaid || edge.Drop.Value is null);
        foreach (var edge in edges.Except(open.SelectMany(group => group)))
        {
            yield return CaseOf([edge], edge.Address, edge.At, limit, Verdict.Holds);
        }

        foreach (var edge in open[false])
        {
            yield return CaseOf([edge], edge.Address, edge.At, limit, Verdict.Fails);
        }

        if (open[true].ToList() is { Count: > 0 } unknown)
        {
            var at = unknown[0].Drop.Value is null ? unknown[0].Stage.Height.At : unknown[0].At;
            yield return CaseOf(unknown, unknown[0].Together, at, limit, Verdict.CannotBeJudged);
        }
    }

    private static Case CaseOf(List<StageEdge> edges, Address where, Mark at, Figure<Length> limit, Verdict verdict) =>
        new(edges, limit, where, at, verdict, edges[0].Drop.RestsOn.With(edges[0].RestsOn));

    private static string Capital(string name) => char.ToUpperInvariant(name[0]) + name[1..];

    internal sealed record Case(IReadOnlyList<StageEdge> Edges, Figure<Length> Limit, Address Where, Mark At, Verdict Verdict, Doubts RestsOn)
        : Judgement(Where, At, Verdict, RestsOn);
}
