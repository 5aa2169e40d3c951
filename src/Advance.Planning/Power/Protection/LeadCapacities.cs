using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out what each mains lead carries where it lies: in the air there is, together with others, coiled where it is too long, with harmonics.</summary>
internal sealed class LeadCapacities
{
    // A lead coiled as it is carried, turn on turn; common practice, no source.
    private const double Turn = 1.5;
    private const int MostTurns = 20;

    private readonly Brief brief;
    private readonly IReadOnlyList<LeadUse> uses;
    private readonly ILookup<LeadUse, LeadGroup> groups;

    /// <param name="brief">As written.</param>
    /// <param name="uses">What comes through each run.</param>
    public LeadCapacities(Brief brief, IReadOnlyList<LeadUse> uses)
    {
        (this.brief, this.uses) = (brief, uses);
        groups = GroupsOf(uses).SelectMany(one => one.Members.Select(member => (Member: member, one.Group))).ToLookup(one => one.Member, one => one.Group, ByReference);
    }

    private static IEqualityComparer<LeadUse> ByReference => ReferenceEqualityComparer.Instance;

    /// <summary>One for each kind of lead in a run.</summary>
    public IReadOnlyList<LeadCapacity> All() => [.. uses.SelectMany(use => use.Run.Leads.DistinctBy(lead => lead.Id).Select(lead => Of(use, lead)))];

    private static IEnumerable<(LeadGroup Group, IReadOnlyList<LeadUse> Members)> GroupsOf(IReadOnlyList<LeadUse> uses)
    {
        var ways = uses.SelectMany(use => (use.Run.Route?.Ways ?? []).Select(way => (way, use))).GroupBy(one => one.way, one => one.use);
        var looms = uses.Where(use => use.Run.Loom is not null).GroupBy(use => use.Run.Loom!, StringComparer.Ordinal);
        return
        [
            .. ways.Select(way => (new LeadGroup(way.Key.Name, way.Key, [.. way]), (IReadOnlyList<LeadUse>)[.. way])),
            .. looms.Select(loom => (new LeadGroup($"loom {loom.Key}", null, [.. loom]), (IReadOnlyList<LeadUse>)[.. loom])),
            .. uses.Where(use => use.Circuits > 1).Select(use => (new LeadGroup(use.Run.Label, null, [use]), (IReadOnlyList<LeadUse>)[use])),
        ];
    }

    private LeadCapacity Of(LeadUse use, Kind lead)
    {
        var tabulated = TabulatedCapacity.Of(lead, use.Loaded, use.Point.Rules);
        var inAir = Sum.Of($"{use.Run.Label}, {lead.Id}, alone", "I = It · Ca", Bs7671.Table4B1).Put("It", tabulated).Put("Ca", AirFactor(use, lead)).Gives((table, air) => table * air);
        var (bare, isByEnds) = TerminationCap.Of(use, lead, inAir);
        var taken = Taken(use, lead).OrderBy(one => one.Factor.Value ?? 0).ToList();
        var harmonics = HarmonicFactor(use, lead);
        var carries = Sum.Of($"{use.Run.Label}, {lead.Id}, as it lies", "Iz = I · C · Ch", Bs7671.Table4C1)
            .Put("I", bare)
            .Put("C", taken.Count > 0 ? taken[0].Factor : One)
            .Put("Ch", harmonics)
            .Gives((alone, together, harmonic) => alone * together * harmonic);
        var worst = taken.Count > 0 && taken[0].Factor.Value is not >= 1 ? taken[0] : harmonics.Value is < 1 ? (Factor: harmonics, Words: "third harmonics", Place: use.Run.Label) : default;
        return new LeadCapacity(use.Run, lead, use.Device, use.InUse, use.AtMost, bare, carries, worst.Words ?? "", worst.Place ?? "") { IsByTerminations = isByEnds };
    }

    private static Figure<double> One => new(1, Doubts.None, Reason.Derived.It);

    // Along its way a lead is as warm as in the worst place on it: the factors of several places do not add up.
    private IEnumerable<(Figure<double> Factor, string Words, string Place)> Taken(LeadUse use, Kind lead)
    {
        foreach (var group in groups[use])
        {
            yield return (group.Factor(use.Point.Rules), $"{group.Circuits} loaded circuits {group.How}", group.Name);
        }

        if (lead.Cable!.Drum is { } drum && use.Run.Surplus.Value is { Meters: > 0 })
        {
            yield return (OnDrum(lead, drum), "left on its drum", $"the drum of {use.Run.Label}");
        }
        else if (use.Run.Surplus.Value is { } surplus && (int)(surplus.Meters / Turn) is var turns and > 1)
        {
            yield return (Coiled(use.Run, Math.Min(turns, MostTurns)), $"{turns} turns coiled", $"the coil of {use.Run.Label}");
        }
    }

    private static Figure<double> Coiled(Run run, int turns) =>
        Sum.Of($"{run.Label}, what is left over coiled in {turns} turns, each like a circuit beside the others", "Cc = c", Bs7671.Table4C1)
            .Put("c", new Figure<double>(Grouping.Bunched(turns), run.Surplus.RestsOn, Reason.Derived.It))
            .Gives(factor => factor);

    private static Figure<double> OnDrum(Kind lead, Given<CableDrum> drum) =>
        Sum.Of($"{lead.Id}, left on its drum", "Cc = c", Bs7671.Drums)
            .Put("c", new Figure<double>(drum.IsKnown ? FactorOf(drum.Value) : null, Doubts.Of(drum.Doubt), new Reason.Fixed(drum.At)))
            .Gives(factor => factor);

    private static double? FactorOf(CableDrum drum) => drum switch
    {
        CableDrum.Radial => Drums.Radial(isVentilated: false),
        CableDrum.RadialVentilated => Drums.Radial(isVentilated: true),
        _ => Drums.Cylindrical(drum - CableDrum.OneLayer + 1),
    };

    private Figure<double> AirFactor(LeadUse use, Kind lead)
    {
        var insulation = LeadResistance.ClassOf(lead.Cable!);
        return Sum.Of("factor of the air", "Ca = min(1, √((θ - t) / (θ - 30)))", Bs7671.Table4B1)
            .Put("θ", new Figure<double>((double)insulation, Doubts.None, Reason.Derived.It))
            .Put("t", AirAt(use) is { Value: { } air } hot && AmbientTemperature.Factor(insulation, air) is null ? hot with { Value = null } : AirAt(use))
            .Gives((most, around) => Math.Min(1, Math.Sqrt((most - around.DegreesCelsius) / (most - AmbientTemperature.OfTables))));
    }

    // The hottest place on its way; of the rest the air of the gig.
    private Figure<Temperature> AirAt(LeadUse use)
    {
        var whole = brief.Gig.Temperature is { IsKnown: true } said ? Figure.From(said) : Figure.Policy("temperature", brief.Company.Policies.Temperature);
        return groups[use].Select(group => group.Air).Where(air => air is { IsKnown: true }).Select(air => Figure.From(air!.Value)).Append(whole).MaxBy(air => air.Value!.Value.DegreesCelsius)!;
    }

    // Four cores and more with a third harmonic: Annex E goes by its share of the line's whole current, and above a third by the neutral's, three
    // times that share, so that the line may have so much less.
    private static Figure<double> HarmonicFactor(LeadUse use, Kind lead)
    {
        if (use.Point.Neutral is not { InUse: var neutral } || lead.Cable!.Cores < 4 || use.Loaded < 3
            || neutral.Orders.FirstOrDefault(order => order.Order == 3) is not { Current: { Value: not null } third } || use.InUse.Value is not { Amperes: > 0 })
        {
            return One;
        }

        var share = Sum.Of($"{use.Run.Label}, third harmonic of the line, per cent", "h = 100 · t / (n · I)", Publication.Arithmetic)
            .Put("t", third)
            .Put("n", Figure.Count(Math.Max(1, neutral.On.Count)))
            .Put("I", use.InUse)
            .Gives((current, legs, line) => 100 * current.Amperes / (legs * line.Amperes));
        var sizing = HarmonicSizing.For(share.Value!.Value);
        var factor = new Figure<double>(sizing.Factor, share.RestsOn.With(neutral.Current.RestsOn), Reason.Derived.It);
        var name = $"{use.Run.Label}, factor for third harmonics";
        return sizing.OnNeutral
            ? Sum.Of(name, "Ch = min(c, 100 · c / (3 · h))", Iec60364.AnnexE).Put("c", factor).Put("h", share).Gives((table, percent) => Math.Min(table, 100 * table / (3 * percent)))
            : Sum.Of(name, "Ch = c", Iec60364.AnnexE).Put("c", factor).Gives(table => table);
    }
}
