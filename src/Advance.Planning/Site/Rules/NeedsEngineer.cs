using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>site/needs-engineer</c></summary>
internal sealed class NeedsEngineer : Rule<NeedsEngineer.Case>
{
    public override string Name => "site/needs-engineer";

    public override Severity Severity => Severity.Stop;

    public override bool LifeOrFuse => true;

    public override string Catches => "Something is put up that the sums of this package are not for: ground-supported, corner, grid or curved truss, truss that stands in wind, loads that move over people, screens that stand on each other, guyed towers and masts, what people climb or are lifted by, a roof under snow or standing water, structures that are joined.";

    public override string Why => "These sums are for straight truss hung from above and for things on their own feet; taken for anything else they are wrong and look right.";

    public override string Cures => "Have an engineer work it out and sign it, and accept this with the engineer's name.";

    public override Publication Source => Publication.CommonPractice;

    // The rule looked even where there is nothing.
    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var found = EngineersMatter.In(plan).Select(matter => new Case(matter, matter.Where, matter.At, matter.IsCertain ? Verdict.Fails : Verdict.CannotBeJudged)).ToList();
        return found.Count > 0 ? found : [new Case(null, StandingSite.Address, plan.Brief.Gig.At, Verdict.Holds)];
    }

    protected override Said Say(Case found) => new(found.Matter!.IsCertain ? Words.Of($"{found.Matter.What}: {found.Matter.Why} needs an engineer.") : Words.Of($"{found.Matter.What}: nobody says yet whether it is {found.Matter.Why}, which needs an engineer."), Cures, $"{found.Matter.Why}");

    internal sealed record Case(EngineersMatter? Matter, Address Where, Mark At, Verdict Verdict) : Judgement(Where, At, Verdict, Matter?.RestsOn ?? Doubts.None);
}
