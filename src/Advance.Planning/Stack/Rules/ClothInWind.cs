using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>stack/cloth-in-wind</c></summary>
internal sealed class ClothInWind : Rule<ClothInWind.Case>
{
    public override string Name => "stack/cloth-in-wind";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A cloth hangs in the open, the stated gust swings it out further than the company allows, and nobody says that it comes down before; or nobody knows what the wind sees of it.";

    public override string Why => "A cloth that is left up is a sail: it pulls its truss sideways and doubles what the roof gets of the wind.";

    public override string Cures => "Write under wind, lowered, at which gust it comes down, who does it and how long that takes; or an open net.";

    public override Publication Source => Handbook.En1991.Forces;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Standing.Cloths.Select(cloth => new Case(cloth));

    protected override Said Say(Case found) => (found.Cloth.Limit.Value, found.Cloth.Gust.Value) switch
    {
        (null, _) when found.Cloth.Lowered is not null => new($"{found.Cloth.What} on {found.Cloth.On} comes down in wind, and nobody says at which gust.", "Write the gust.", $"unknown"),
        ({ } limit, { } gust) => new($"{found.Cloth.What} on {found.Cloth.On} must be down before a gust of {limit}, and {gust} is stated; nobody says that it comes down.", Cures, $"{limit} of {gust}"),
        ({ } limit, _) => new($"{found.Cloth.What} on {found.Cloth.On} must be down before a gust of {limit}; nobody says up to which gust everything stands.", "Write the gust, and when it comes down.", $"{limit}"),
        _ => new($"{found.Cloth.What} on {found.Cloth.On} hangs in the open, and nobody says what wind sees of it, or what it weighs.", "Write its wind-area: width times height; nothing for a loom.", $"unknown"),
    };

    // Where it is written when it comes down somebody has decided; without that it stays up.
    private static Verdict Judge(ClothPlan cloth) => cloth.Lowered?.From is { } from
        ? from.IsKnown ? Verdict.Holds : Verdict.CannotBeJudged
        : cloth.Gust.AtMost(cloth.Limit);

    internal sealed record Case(ClothPlan Cloth) : Judgement(Cloth.Address, Cloth.At, Judge(Cloth), Cloth.Limit.RestsOn.With(Cloth.Gust.RestsOn));
}
