using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>rigging/part-overload</c></summary>
internal sealed class PartOverload : Rule<PartOverload.Case>
{
    public override string Name => "rigging/part-overload";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "A sling, steel or shackle carries more than it may by its hitch and by who is below.";

    public override string Why => "A chain of good parts breaks at the one that nobody looked up.";

    public override string Cures => "A stronger part, or two.";

    public override Publication Source => Handbook.RiggingStandards.En1492;

    // Where nobody knows what comes to it, another rule asks.
    protected override IEnumerable<Case> Cases(Plan plan) =>
    [
        .. from pick in plan.Rigging.Picks
           from part in pick.Parts
           where part.Carries.Value is not null
           select new Case(pick.Name, part, pick.Address / part.Part.Item, pick.Placed.Pick.At),
        .. from bridle in plan.Rigging.Bridles
           from leg in bridle.Legs
           from part in leg.Parts
           where part.Carries.Value is not null
           select new Case($"bridle {bridle.Name}, leg to {leg.Point}", part, bridle.Address / leg.Point / part.Part.Item, bridle.Bridle.At),
    ];

    protected override Said Say(Case found) => new(
        $"{found.Of}: {found.Use.Carries.Value!.Value} on {found.Use.Part.Item}{Laid(found.Use.Hitch)}, and it may carry {(found.Use.May.Value is { } may ? Words.Of($"{may}") : Words.FromString("nobody knows how much"))}{(found.Use.IsOver ? " over people" : "")}.",
        "A stronger part, or two.",
        $"{found.Use.Carries.Value!.Value} on {found.Use.Part.Item}");

    private static string Laid(SlingHitch? hitch) => hitch is { } known ? $", {known.Words()}" : "";

    internal sealed record Case(string Of, PartUse Use, Address Place, Mark Written)
        : Judgement(Place, Written, Use.Carries.AtMost(Use.May), Use.Carries.RestsOn.With(Use.May.RestsOn));
}
