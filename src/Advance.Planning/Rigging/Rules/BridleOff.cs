using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/bridle-off</c></summary>
internal sealed class BridleOff : Rule<BridleOff.Case>
{
    public override string Name => "rigging/bridle-off";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "No steels and chains of the stock make legs that hang the hook of a bridle where it is wanted.";

    public override string Why => "The hook hangs elsewhere than drawn, every angle is another, and it is found out on the beam.";

    public override string Cures => "Steels of other lengths, an adjusting chain, another drop, or write what the legs are made of.";

    public override Publication Source => Publication.CommonPractice;

    // What legs are made of may be written, and where nobody knows how they lie another rule asks.
    protected override IEnumerable<Case> Cases(Plan plan) => plan.Rigging.Bridles.Where(bridle => bridle.Bridle.Gear.Count == 0 && bridle.Placed.Wanted is not null).Select(bridle => new Case(bridle));

    protected override Said Say(Case found)
    {
        var wanted = string.Join(", ", found.Bridle.Legs.Select(leg => FormattableString.Invariant($"{leg.Length:0.00} m")));
        return found.Bridle.Placed.Nearest is { } nearest
            ? new($"Bridle {found.Bridle.Name}: legs of {wanted} are wanted; the nearest of the stock hang its hook {Length.FromMeters(nearest)} away.", Cures, $"{Length.FromMeters(nearest)}")
            : new($"Bridle {found.Bridle.Name}: legs of {wanted} are wanted, and the stock has no steels that meet.", Cures, $"none");
    }

    internal sealed record Case(BridlePlan Bridle) : Judgement(Bridle.Address / "made", Bridle.Bridle.At, Bridle.Placed.IsOff ? Verdict.Fails : Verdict.Holds, Bridle.Placed.RestsOn);
}
