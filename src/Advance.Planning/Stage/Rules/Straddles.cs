using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>stage/straddles</c></summary>
internal sealed class Straddles : Rule<Straddles.Case>
{
    // Nobody places a thing to the centimetre.
    private const double Slack = 0.02;

    public override string Name => "stage/straddles";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Something stands half on the deck and half beside it, or where the deck is.";

    public override string Why => "It hangs over an edge, or cannot stand there at all, and that is found when everything around it is built.";

    public override string Cures => "Move it, turn it, or write the size that it really has.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        if (plan.Stage.Outline is not { } outline || plan.Stage.Edges.All(edge => edge.Drop.Value is { Meters: 0 }))
        {
            return [];
        }

        var things = plan.Stage.Things.Concat(plan.Sound.Things).Concat(plan.Power.Things).Concat(plan.Lighting.Things);
        var cases = things.Where(thing => thing.Look is not (Look.Steps or Look.KeepClear)).Select(thing => Judge(thing, outline)).OfType<Case>();

        // The two of a mirrored pair have one place, and one mistake in it.
        return cases.DistinctBy(found => found.Verdict == Verdict.Holds ? (found.Where, Mark.Nowhere) : (default(Address), found.At));
    }

    protected override Said Say(Case found)
    {
        var (name, by) = (found.Thing.Name, Length.FromMeters(found.By));
        var edge = $"{StageEdgeWords.Of(found.Edge)} edge";
        if (found.Verdict == Verdict.CannotBeJudged)
        {
            return new($"{name}: stands at the {edge} of the deck, and nobody knows how large it is.", "Write its size.", $"size unknown, at the {edge}");
        }

        return found.Thing.On == Footing.Deck
            ? new($"{name}: hangs {by} over the {edge} of the deck.", $"Move it {by} in from the {edge}.", $"{by} over the {edge}")
            : new($"{name}: stands on the floor, and the deck is {by} in its way at the {edge}.", $"Move it {by} away from the {edge}.", $"{by} in at the {edge}");
    }

    // A thing of unknown size is asked about only where the usual size would not fit; elsewhere there is nothing to say.
    private static Case? Judge(Placed thing, Outline outline)
    {
        var (edge, by) = outline.Straddled(thing.Spot, thing.Covers, thing.Turn);
        var isOver = by > Slack;
        return thing.Covers.IsGuess
            ? isOver ? new Case(thing, edge, by, Verdict.CannotBeJudged) : null
            : new Case(thing, edge, by, isOver ? Verdict.Fails : Verdict.Holds);
    }

    internal sealed record Case(Placed Thing, StageEdges Edge, double By, Verdict Verdict) : Judgement(Thing.Address, Thing.At, Verdict, Thing.RestsOn);
}
