using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What each load draws in each show state.</summary>
internal sealed class StateDraw(Policies policies, IReadOnlyList<ShowStateRow> times)
{
    /// <summary>In use, in a state.</summary>
    public Figure<ElectricCurrent> InUse(PowerLoad load, ShowState state) => Shared(load, load.InUse, state);

    /// <summary>At most, in a state.</summary>
    public Figure<ElectricCurrent> AtMost(PowerLoad load, ShowState state) => Shared(load, load.AtMost, state);

    /// <summary>Whether somebody else's load runs in a state; where nobody gave the times of a state, it does.</summary>
    public bool Runs(OtherLoad other, ShowState state)
    {
        var rows = times.Where(row => row.State == state && row.Time.IsKnown).ToList();
        return other.Time is not { IsKnown: true } when || rows.Count == 0
            || rows.Any(row => row.Time.Value.From.CompareTo(when.Value.To) < 0 && when.Value.From.CompareTo(row.Time.Value.To) < 0);
    }

    private Figure<ElectricCurrent> Shared(PowerLoad load, Figure<ElectricCurrent> draw, ShowState state) =>
        StateShares.Of(load.Use, state, policies) is { } share
            ? Sum.Of($"{load.Name}, {StateShares.Word(state)}", "I = s / 100 · i", Publication.CommonPractice).Put("s", share).Put("i", draw).Gives((part, full) => full * (part / 100))
            : draw;
}
