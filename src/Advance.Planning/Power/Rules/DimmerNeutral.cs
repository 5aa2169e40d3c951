using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>power/dimmer-neutral</c></summary>
internal sealed class DimmerNeutral : Rule<DimmerNeutral.Case>
{
    public override string Name => "power/dimmer-neutral";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "Leads of one core each feed dimmers that cut the wave, and their neutral is good for less than 130 % of a line.";

    public override string Why => "At half light the neutral of such dimmers carries more than any line, and no device watches it.";

    public override string Cures => "Lay a thicker neutral, or a second one beside it if the set is listed for that.";

    public override Publication Source => Nec.DimmerNeutral;

    // Line and neutral compared as they lie alike; the tables have two single cores.
    private const int Pair = 2;

    // With one line the neutral carries what the line does. A dimmer of which nobody says that it cuts the wave asks for nothing.
    protected override IEnumerable<Case> Cases(Plan plan) =>
        from use in LeadUses.Of(plan.Power, plan.Cables)
        let dimmers = use.Point.Loads.Where(load => load.Piece?.Kind?.Mains?.CutsPhase is { } cuts && !(cuts.IsKnown && !cuts.Value)).ToList()
        where dimmers.Count > 0 && use.Point.Legs.Count > 1
        from lead in use.Run.Leads.DistinctBy(lead => lead.Id)
        where lead.Cable!.Cores == 1
        select new Case(use, lead, Needed(use, lead), Neutral(use, lead), dimmers);

    protected override Said Say(Case found) => found.Verdict == Verdict.CannotBeJudged
        ? new($"{found.Use.Run.Label} feeds {found.Dimmers[0].Name}, and nobody knows {(found.IsSure ? $"what the neutral of {found.Lead.Id} carries" : "whether that cuts the wave")}.", found.IsSure ? "Write the section of the neutral in the stock." : "Write cuts-phase in the stock.", $"unknown")
        : new(
            $"{found.Use.Run.Label} feeds {found.Dimmers[0].Name}: the neutral of {found.Lead.Id} carries {found.Carries.Value!.Value}, and by its lines {found.Needed.Value!.Value} are wanted.",
            "Lay a thicker neutral.",
            $"{found.Carries.Value!.Value} of {found.Needed.Value!.Value}");

    private static Figure<ElectricCurrent> Needed(LeadUse use, Kind lead) =>
        Sum.Of($"{use.Run.Label}, {lead.Id}, what its neutral must carry behind phase-control", "I = 1.3 · It", Nec.DimmerNeutral)
            .Put("It", TabulatedCapacity.Of(lead, Pair, use.Point.Rules))
            .Gives(SinglePoleSets.NeutralForDimmers);

    private static Figure<ElectricCurrent> Neutral(LeadUse use, Kind lead) =>
        TabulatedCapacity.Of(lead.Cable!.NeutralSection is { Length: > 0 } own ? lead with { Cable = lead.Cable with { Section = own, Rating = null } } : lead, Pair, use.Point.Rules);

    internal sealed record Case(LeadUse Use, Kind Lead, Figure<ElectricCurrent> Needed, Figure<ElectricCurrent> Carries, IReadOnlyList<PowerLoad> Dimmers)
        : Judgement(Address.Of("power") / "dimmer-neutral" / Use.Run.Label / Lead.Id, Use.At, Judge(Needed, Carries, Dimmers), Dimmers.Aggregate(Needed.RestsOn.With(Carries.RestsOn), (sum, load) => sum.With(Doubts.Of(load.Piece?.Kind?.Mains?.CutsPhase?.Doubt))))
    {
        public bool IsSure => AreSure(Dimmers);

        private static bool AreSure(IReadOnlyList<PowerLoad> dimmers) => dimmers.Any(load => load.Piece!.Kind!.Mains!.CutsPhase is { IsKnown: true });

        private static Verdict Judge(Figure<ElectricCurrent> needed, Figure<ElectricCurrent> carries, IReadOnlyList<PowerLoad> dimmers) => needed.AtMost(carries) switch
        {
            Verdict.Fails when !AreSure(dimmers) => Verdict.CannotBeJudged,
            var verdict => verdict,
        };
    }
}
