using System.Globalization;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>
/// Who listens where. What was fixed is obeyed; what was issued is kept where it is still free; all others take the next free slots in the
/// order of their numbers, so that without an earlier issue a fixture put in between moves those behind it.
/// </summary>
internal sealed class SlotBook
{
    private readonly SortedDictionary<int, List<SlotRange>> taken = [];
    private readonly Choices earlier;
    private readonly int? universes;
    private readonly SlotRange? keptFree;

    /// <summary>An empty book.</summary>
    /// <param name="universes">How many the desk sends; null where that is not known.</param>
    /// <param name="free">Slots at the end of each universe that are only given away where there is no other room.</param>
    /// <param name="earlier">What was chosen for the last issue.</param>
    public SlotBook(int? universes, int free, Choices earlier)
    {
        this.universes = universes;
        this.earlier = earlier;
        var kept = Math.Min(free, LightingControl.SlotsInUniverse);
        keptFree = kept > 0 ? new SlotRange(LightingControl.SlotsInUniverse - kept + 1, kept) : null;
    }

    /// <summary>Gives each fixture its address, as far as its mode is known and there is room.</summary>
    /// <param name="fixtures">In the order of their numbers.</param>
    public IReadOnlyList<FixturePlan> Assign(IReadOnlyList<FixturePlan> fixtures)
    {
        var given = new ControlAddress?[fixtures.Count];
        Give(fixtures, given, Fixed);
        Give(fixtures, given, Issued);
        Give(fixtures, given, Next);
        return [.. fixtures.Select((fixture, index) => fixture with { At = given[index], Why = Why(fixture) })];
    }

    private void Give(IReadOnlyList<FixturePlan> fixtures, ControlAddress?[] given, Func<FixturePlan, ControlAddress?> choose)
    {
        for (var index = 0; index < fixtures.Count; index++)
        {
            if (given[index] is null && choose(fixtures[index]) is { } address)
            {
                given[index] = address;
                In(address.Universe).Add(new SlotRange(address.Slot, fixtures[index].Mode?.Slots ?? 1));
            }
        }
    }

    private static Reason Why(FixturePlan fixture) => fixture.Row.Address is { IsKnown: true } written ? new Reason.Fixed(written.At) : Reason.Derived.It;

    // Behind the first of a row of unknown mode nobody knows where the next one starts.
    private static ControlAddress? Fixed(FixturePlan fixture)
    {
        if (fixture.Row.Address is not { } written || !written.Is(out var first))
        {
            return null;
        }

        return fixture.Index == 0 ? first : fixture.Mode is { } mode ? first with { Slot = first.Slot + (fixture.Index * mode.Slots) } : null;
    }

    private ControlAddress? Issued(FixturePlan fixture)
    {
        if (IsFixed(fixture) || fixture.Mode is not { } mode || Read(earlier.Of(fixture.Address)) is not { } issued)
        {
            return null;
        }

        var range = new SlotRange(issued.Slot, mode.Slots);
        return range.IsInUniverse && issued.Universe <= (universes ?? int.MaxValue) && !In(issued.Universe).Exists(range.Overlaps) ? issued : null;
    }

    private ControlAddress? Next(FixturePlan fixture) => IsFixed(fixture) || fixture.Mode is not { } mode
        ? null
        : Next(mode.Slots, keptFree) ?? Next(mode.Slots, reserve: null);

    // A desk whose universes nobody knows has as many as are asked for.
    private ControlAddress? Next(int slots, SlotRange? reserve)
    {
        for (var universe = 1; universe <= (universes ?? int.MaxValue); universe++)
        {
            var others = taken.GetValueOrDefault(universe) ?? [];
            if (LightingControl.NextFree(reserve is { } kept ? others.Append(kept) : others, slots) is { } slot)
            {
                return new ControlAddress(universe, slot);
            }

            // What finds no room in an empty one finds none in the next.
            if (others.Count == 0)
            {
                return null;
            }
        }

        return null;
    }

    private static bool IsFixed(FixturePlan fixture) => fixture.Row.Address is { IsKnown: true };

    private List<SlotRange> In(int universe)
    {
        if (!taken.TryGetValue(universe, out var ranges))
        {
            taken[universe] = ranges = [];
        }

        return ranges;
    }

    private static ControlAddress? Read(string? text) =>
        text?.Split('/') is [var universe, var slot]
        && int.TryParse(universe, NumberStyles.None, CultureInfo.InvariantCulture, out var u)
        && int.TryParse(slot, NumberStyles.None, CultureInfo.InvariantCulture, out var s)
        && u > 0 && s > 0
            ? new ControlAddress(u, s)
            : null;
}
