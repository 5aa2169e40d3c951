using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary><c>rigging/one-brake</c></summary>
internal sealed class OneBrake : Rule<OneBrake.Case>
{
    public override string Name => "rigging/one-brake";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A hoist holds something over people by one brake, or by nobody knows how many, and nothing secondary is said.";

    public override string Why => "A worn brake lets go slowly, and nobody looks up.";

    public override string Cures => "Hoists with two brakes, something secondary that takes the load once it is at trim, or a clear area below.";

    public override Publication Source => Handbook.RiggingStandards.EventRigging;

    // Of hoists of one kind it is one question.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from pick in HeldByBrakesAlone(plan)
        where pick.Placed.Hoist?.Kind?.Hoist is not null
        group pick by pick.Placed.Hoist!.Item into alike
        select new Case(alike.Key, [.. alike]);

    protected override Said Say(Case found) => found.Verdict == Verdict.Fails
        ? new($"{found.Hoist} has one brake, and holds {found.Names} over people with nothing secondary.", "Hoists with two brakes, or say what is secondary.", $"{found.Names}")
        : new($"{found.Hoist}: nobody knows how many brakes it has; it holds {found.Names} over people with nothing secondary.", "Write brakes to it in the stock, or say what is secondary.", $"unknown");

    private static IEnumerable<PickPlan> HeldByBrakesAlone(Plan plan) =>
    [
        .. from truss in plan.Rigging.Trusses
           where IsOver(truss.Placed.Truss.Below) && IsNone(truss.Placed.Truss.Secondary)
           from pick in truss.Picks
           select pick,
        .. from hang in plan.Rigging.Hangs
           where IsOver(hang.Placed.Flown.Below) && IsNone(hang.Placed.Flown.Secondary)
           from pick in hang.Picks
           select pick.Pick,
    ];

    private static bool IsNone(Given<string>? secondary) => secondary is not { } said || (said.Is(out var words) && string.Equals(words, "none", StringComparison.OrdinalIgnoreCase));

    private static bool IsOver(Given<PeopleBelow>? below) => below is not { IsKnown: true, Value: PeopleBelow.Never };

    internal sealed record Case(string Hoist, IReadOnlyList<PickPlan> Picks) : Judgement(
        Address.Of("rigging") / "brakes" / Hoist, Picks[0].Placed.Pick.At, Judge(Picks[0].Placed.Hoist!.Kind!.Hoist!.Brakes), Doubts.Of(Picks[0].Placed.Hoist!.Kind!.Hoist!.Brakes?.Doubt))
    {
        /// <summary>What it holds.</summary>
        public string Names => string.Join(", ", Picks.Select(pick => pick.Name));

        private static Verdict Judge(Given<int>? brakes) => brakes is not { IsKnown: true } many ? Verdict.CannotBeJudged : many.Value > 1 ? Verdict.Holds : Verdict.Fails;
    }
}
