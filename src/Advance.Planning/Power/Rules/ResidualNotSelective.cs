using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/residual-not-selective</c></summary>
internal sealed class ResidualNotSelective : Rule<ResidualNotSelective.Case>
{
    public override string Name => "power/residual-not-selective";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Two residual-current devices in a row are too alike for only the nearer one to trip.";

    public override string Why => "One wet plug darkens everything behind the service.";

    public override string Cures => "Ask for a delayed device of at least three times the rating at the service, or know where it is reset.";

    public override Publication Source => Bs7671.ResidualSelectivity;

    // One case a box, for its circuits are alike. Where nobody says whether the farther one waits, sheets say that it is not shown; it is a
    // question only where somebody has asked.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from pair in plan.Protection.Selectivity.Residual
        where pair.Nearer.Rules != WiringRules.Nec
        let found = new Case(pair, ResidualDevice.At(pair.Nearer)!, ResidualDevice.At(pair.Farther)!)
        where found.Verdict != Verdict.CannotBeJudged || found.Farther.Delay is not null
        group found by found.Box into box
        select box.OrderByDescending(found => found.Verdict == Verdict.Fails).First();

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Box}: {found.Own} behind {found.Before} of {found.Farther.Point.Name}, and nobody knows whether that one waits.", "Write residual-delay.", $"unknown")
        : new(
            $"{found.Box}: {found.Own} behind {found.Before} of {found.Farther.Point.Name}, where three times as much and a delay part them.",
            "Ask for a delayed device at the service, or know where it is reset.",
            $"{found.Own} behind {found.Before}");

    private static Verdict Judge(Selective found) => found switch
    {
        Selective.Yes => Verdict.Holds,
        Selective.No => Verdict.Fails,
        _ => Verdict.CannotBeJudged,
    };

    internal sealed record Case(DevicePair Pair, ResidualDevice Nearer, ResidualDevice Farther)
        : Judgement(Address.Of("power") / Pair.Box / "selective", Nearer.Point.At, Judge(Pair.Is), Pair.RestsOn)
    {
        public string Box => Pair.Box;

        public ElectricCurrent Own => Nearer.Rating.Value!.Value;

        public ElectricCurrent Before => Farther.Rating.Value!.Value;
    }
}
