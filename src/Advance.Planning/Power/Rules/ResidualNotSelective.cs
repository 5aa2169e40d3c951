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
        from circuit in plan.Power.Circuits
        where circuit.Outlet.Rules != WiringRules.Nec
        let devices = ResidualDevice.Above(circuit.Outlet)
        from index in Enumerable.Range(0, Math.Max(0, devices.Count - 1))
        let found = new Case(circuit, devices[index], devices[index + 1])
        where found.Verdict != Verdict.CannotBeJudged || devices[index + 1].Delay is not null
        group found by found.Box into box
        select box.OrderByDescending(found => found.Verdict == Verdict.Fails).First();

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Box}: {found.Own} behind {found.Before} of {found.Farther.Point.Name}, and nobody knows whether that one waits.", "Write residual-delay.", $"unknown")
        : new(
            $"{found.Box}: {found.Own} behind {found.Before} of {found.Farther.Point.Name}, where three times as much and a delay part them.",
            "Ask for a delayed device at the service, or know where it is reset.",
            $"{found.Own} behind {found.Before}");

    private static Verdict Judge(ResidualDevice own, ResidualDevice before) =>
        ResidualDevices.IsSelective(before.Rating.Value!.Value, before.IsDelayed, own.Rating.Value!.Value) switch
        {
            null => Verdict.CannotBeJudged,
            true => Verdict.Holds,
            false => Verdict.Fails,
        };

    internal sealed record Case(Circuit Circuit, ResidualDevice Nearer, ResidualDevice Farther)
        : Judgement(Address.Of("power") / (Nearer.Point.Device?.Name ?? Nearer.Point.Name) / "selective", Nearer.Point.At, Judge(Nearer, Farther), Nearer.Rating.RestsOn.With(Farther.DelayRestsOn))
    {
        public string Box => Nearer.Point.Device?.Name ?? Nearer.Point.Name;

        public ElectricCurrent Own => Nearer.Rating.Value!.Value;

        public ElectricCurrent Before => Farther.Rating.Value!.Value;
    }
}
