using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Mains runs that lie together, in a way or a loom, and what that takes of what each carries. A run under a third of its grouped capacity
/// warms the others too little to count.
/// </summary>
internal sealed class LeadGroup
{
    // More than the table has are taken as the most it has.
    private const int MostTabulated = 20;

    private readonly IReadOnlyList<LeadUse> members;
    private readonly CableWay? way;

    /// <param name="name">Of the way or the loom.</param>
    /// <param name="way">The way; null for a loom.</param>
    /// <param name="members">The runs.</param>
    public LeadGroup(string name, CableWay? way, IReadOnlyList<LeadUse> members)
    {
        (Name, this.way, this.members) = (name, way, members);
        Circuits = Count();
    }

    /// <summary>Of the way or the loom.</summary>
    public string Name { get; }

    /// <summary>How many loaded circuits lie there, at least one.</summary>
    public int Circuits { get; }

    /// <summary>The air there; null where nobody says.</summary>
    public Given<Temperature>? Air => way?.Air;

    /// <summary>How they lie, in words.</summary>
    public string How => way?.How is { IsKnown: true } how ? how.Value switch
    {
        LaidHow.Apart => "apart",
        LaidHow.OneLayer => "in one layer",
        LaidHow.Ramp => "under a ramp",
        LaidHow.Buried => "buried",
        _ => "bunched",
    }
    : "bunched";

    /// <summary>What is left, of one: for grouping and for cover.</summary>
    public Figure<double> Factor(WiringRules? rules)
    {
        var grouped = Sum.Of($"{Name}, {Circuits} loaded circuits {How}", "Cg = c", rules == WiringRules.Nec ? Nec.Table400A3 : Bs7671.Table4C1)
            .Put("c", new Figure<double>(GroupedFor(Circuits, rules), Doubts.Of(way?.How?.Doubt).With(Doubts.Of(way?.OtherCircuits?.Doubt)), way is null ? Reason.Derived.It : new Reason.Fixed(way.At)))
            .Gives(factor => factor);
        return IsCovered ? Sum.Of($"{Name}, grouped and covered", "C = Cg · Ci / 100", Bs7671.Table4C1).Put("Cg", grouped).Put("Ci", Cover).Gives((group, cover) => group * cover / 100) : grouped;
    }

    private bool IsCovered => way?.How is { IsKnown: true, Value: LaidHow.Ramp or LaidHow.Buried };

    // What covered cable still carries is for whoever covers it to say.
    private Figure<double> Cover => way!.CoverFactor is { } given
        ? LegSum.Percent(Figure.From(given))
        : new Figure<double>(null, Doubts.Of(new Doubt($"{way.Name} / cover-factor", way.At, LeftOut: true)), Reason.Derived.It);

    private double GroupedFor(int circuits, WiringRules? rules)
    {
        if (way?.How is { IsKnown: true, Value: LaidHow.Apart })
        {
            return 1;
        }

        var most = Math.Min(circuits, MostTabulated);
        return rules == WiringRules.Nec ? MoreThanThree.Factor(2 * circuits)
            : (way?.How is { IsKnown: true, Value: LaidHow.OneLayer } ? Grouping.OneLayer(most) : Grouping.Bunched(most)) ?? 1;
    }

    private int Count()
    {
        var others = way?.OtherCircuits is { IsKnown: true } said ? said.Value : 0;
        var all = Math.Max(1, members.Sum(use => use.Circuits) + others);
        var loaded = members.Where(use => use.InUse.Value is not { } current
            || use.Run.Leads.Any(lead => TabulatedCapacity.Of(lead, use.Loaded, use.Point.Rules).Value is not { } alone || current.Amperes > Grouping.LightlyLoaded * alone.Amperes * GroupedFor(all, use.Point.Rules)));
        return Math.Max(1, loaded.Sum(use => use.Circuits) + others);
    }
}
