using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/box-fully-loaded</c></summary>
internal sealed class BoxFullyLoaded : Rule<BoxFullyLoaded.Case>
{
    public override string Name => "power/box-fully-loaded";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The circuits of a distribution are all so full that the box as a whole is not made for it.";

    public override string Why => "Breakers side by side heat each other, and open below their rating on a warm afternoon.";

    public override string Cures => "Spread the circuits over another distribution, or ask the maker for the box's diversity.";

    public override Publication Source { get; } = new("IEC 61439-1/-2: assumed loading of outgoing circuits", "", "Table 101", Standing.FromMemory);

    protected override IEnumerable<Case> Cases(Plan plan) =>
        from box in plan.Power.Feeders.Concat(plan.Power.Circuits.Select(circuit => circuit.Outlet)).Where(point => point.Row is { Device.Length: > 0 }).GroupBy(point => point.Device!)
        let outlets = box.ToList()
        where outlets.Count >= Few && outlets.TrueForAll(outlet => outlet.Limit.Value is { Amperes: > 0 } && outlet.Legs[0].InUse.Value is not null)
        select new Case(outlets[0], outlets.Count, MeanUse(outlets), Allowed(outlets[0], outlets.Count));

    protected override Said Say(Case found) => new(
        $"{found.Box}: {found.Count} circuits {found.Mean.Value!.Value} full on average, {found.Most.Value!.Value} {(found.First.DeviceKind?.Mains?.Loading is null ? "assumed for so many side by side" : "stated by its maker")}.",
        "Spread the circuits over another distribution.",
        $"{found.Mean.Value!.Value} of {found.Most.Value!.Value}");

    private const int Few = 2;

    // What the maker states; else what is assumed for so many.
    private static Figure<Ratio> Allowed(SupplyPoint box, int circuits) => box.DeviceKind?.Mains?.Loading is { } stated ? Figure.From(stated) : new(
        Ratio.FromPercent(circuits switch { <= 3 => 90, <= 5 => 80, <= 9 => 70, _ => 60 }), Domain.Facts.Doubts.None, Reason.Derived.It);

    private static Figure<Ratio> MeanUse(List<SupplyPoint> outlets) =>
        Sum.Of("mean use of circuits", "u = Σ uᵢ / n", Publication.Arithmetic)
            .PutAll("uᵢ", outlets.Select(UseOf))
            .Put("n", Figure.Count(outlets.Count))
            .Gives((uses, count) => Ratio.FromPercent(uses.Values.Sum(use => use.Percent) / count));

    private static Figure<Ratio> UseOf(SupplyPoint outlet) =>
        Sum.Of($"{outlet.Name}, use", "u = I / n", Publication.Arithmetic)
            .Put("I", outlet.Legs[0].InUse)
            .Put("n", outlet.Limit)
            .Gives((current, limit) => Ratio.FromPercent(100 * current.Amperes / limit.Amperes));

    internal sealed record Case(SupplyPoint First, int Count, Figure<Ratio> Mean, Figure<Ratio> Most)
        : Judgement(Address.Of("power") / First.Device!.Name / "loading", First.At, Mean.AtMost(Most), Mean.RestsOn)
    {
        public string Box => First.Device!.Name;
    }
}
