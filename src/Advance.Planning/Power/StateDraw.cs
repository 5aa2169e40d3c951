using Advance.Domain.Companies;
using Advance.Domain.Facts;
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

    /// <summary>Whether somebody else's load runs in a state; where its time or one of the state's is open, it does.</summary>
    public bool Runs(OtherLoad other, ShowState state)
    {
        var rows = times.Where(row => row.State == state).ToList();
        return other.Time is not { IsKnown: true } when || rows.Count == 0
            || rows.Exists(row => !row.Time.Is(out var range) || (range.From.CompareTo(when.Value.To) < 0 && when.Value.From.CompareTo(range.To) < 0));
    }

    /// <summary>What somebody else's load draws while it runs; whether it runs rests on when.</summary>
    public Figure<ElectricCurrent> Of(OtherLoad other, ShowState state)
    {
        var draw = Figure.From(other.InUse);
        var whens = times.Where(row => row.State == state).Select(row => row.Time.Doubt).Append(other.Time?.Doubt);
        return draw with { RestsOn = whens.Aggregate(draw.RestsOn, (sum, doubt) => sum.With(Doubts.Of(doubt))) };
    }

    private Figure<ElectricCurrent> Shared(PowerLoad load, Figure<ElectricCurrent> draw, ShowState state) =>
        StateShares.Of(load.Use, state, policies) is { } share
            ? Sum.Of($"{load.Name}, {StateShares.Word(state)}", "I = s / 100 · i", Publication.CommonPractice).Put("s", share).Put("i", draw).Gives((part, full) => full * (part / 100))
            : draw;
}
