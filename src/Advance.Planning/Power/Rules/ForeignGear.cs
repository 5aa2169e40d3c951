using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary><c>power/foreign-gear</c></summary>
internal sealed class ForeignGear : Rule<ForeignGear.Case>
{
    public override string Name => "power/foreign-gear";

    public override Severity Severity => Severity.Note;

    public override string Catches => "An act's own gear hangs behind the same device as the crew's.";

    public override string Why => "Nobody here has tested it: when it trips, it takes the crew's gear with it.";

    public override string Cures => "Give the act's things an outlet with a device of its own, or test them at load-in.";

    public override Publication Source => Publication.CommonPractice;

    // One case an act, for one cause: how its things were hung.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from circuit in plan.Power.Circuits
        where circuit.Outlet.Protection?.Row is not null
        from load in circuit.Chain.Loads
        where IsForeign(load)
        group (load, circuit.Outlet.Protection) by load.Act ?? "" into act
        select new Case(act.Key, [.. act.Where(one => HoldsOwn(one.Protection!)).Select(one => one.load)], act.First().load);

    protected override Said Say(Case found) => new(
        $"{string.Join(", ", found.Mixed.Select(load => load.Name))}{(found.Act.Length > 0 ? $" of {found.Act}" : "")}: behind the same device as gear of the crew.",
        "Give them an outlet with a device of its own, or test them at load-in.",
        $"{string.Join(", ", found.Mixed.Select(load => load.Name))}");

    private static bool HoldsOwn(SupplyPoint device) => device.Loads.Any(load => !IsForeign(load));

    private static bool IsForeign(PowerLoad load) =>
        load.Piece is not { } piece ? load.Act is not null : piece.From.Is(out var owner) && owner.Kind is OwnerKind.Act or OwnerKind.Client;

    internal sealed record Case(string Act, IReadOnlyList<PowerLoad> Mixed, PowerLoad First)
        : Judgement(Address.Of("power") / "foreign" / Act, First.At, Mixed.Count > 0 ? Verdict.Fails : Verdict.Holds, Doubts.None);
}
