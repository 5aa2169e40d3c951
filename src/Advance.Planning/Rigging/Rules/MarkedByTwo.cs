using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary><c>rigging/marked-by-two</c></summary>
internal sealed class MarkedByTwo : Rule<MarkedByTwo.Case>
{
    public override string Name => "rigging/marked-by-two";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Slings, steels or shackles of one truss, hang or bridle are marked by the rules of two regions.";

    public override string Why => "The same colour is another rating, angles count from the vertical in one region and from the horizontal in the other, and parts break at another number of times their rating.";

    public override string Cures => "Parts of one region on one truss, and each read by its own label.";

    public override Publication Source => Handbook.RiggingStandards.AsmeB309;

    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. plan.Rigging.Trusses.Select(truss => new Case(truss.Name, truss.Address, truss.Placed.Truss.At, [.. truss.Picks.SelectMany(pick => pick.Parts)])),
        .. plan.Rigging.Hangs.Select(hang => new Case(hang.Name, hang.Written, hang.Placed.Hang.At, [.. hang.Picks.SelectMany(pick => pick.Pick.Parts)])),
        .. plan.Rigging.Bridles.Select(bridle => new Case($"bridle {bridle.Name}", bridle.Address, bridle.Bridle.At, [.. bridle.Legs.SelectMany(leg => leg.Parts)])),
    ];

    protected override Said Say(Case found) => new(
        $"{found.What}: {string.Join(", ", found.By(MarkedBy.En))} are marked by EN, and {string.Join(", ", found.By(MarkedBy.Asme))} by ASME.",
        "Parts of one region, or read each by its own label.",
        $"{string.Join(", ", found.By(MarkedBy.En))}; {string.Join(", ", found.By(MarkedBy.Asme))}");

    internal sealed record Case(string What, Address Of, Mark Written, IReadOnlyList<PartUse> Parts)
        : Judgement(Of / "marked", Written, Named(Parts, MarkedBy.En).Any() && Named(Parts, MarkedBy.Asme).Any() ? Verdict.Fails : Verdict.Holds, Doubts.None)
    {
        /// <summary>What is marked so, each kind once.</summary>
        public IEnumerable<string> By(MarkedBy region) => Named(Parts, region);

        private static IEnumerable<string> Named(IEnumerable<PartUse> parts, MarkedBy region) =>
            parts.Where(use => use.Part.Kind?.Lifting?.MarkedBy is { IsKnown: true } marked && marked.Value == region).Select(use => use.Part.Item).Distinct(StringComparer.Ordinal);
    }
}
