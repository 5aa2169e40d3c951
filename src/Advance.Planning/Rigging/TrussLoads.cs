using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Finds what each truss carries: itself, fixtures with what comes with them, their cables as picked, hangs, and its dressing.</summary>
internal sealed class TrussLoads(Brief brief, LightingPlan lighting, LeadsUp leads, IReadOnlyList<HangPlan> hangs)
{
    /// <summary>Everything, itself first.</summary>
    public IReadOnlyList<CarriedLoad> Of(PlacedTruss truss)
    {
        var fixtures = FixturesOn(truss);
        return [.. Itself(truss), .. fixtures.Select(fixture => Of(fixture, truss)), .. Cables(truss, fixtures), .. Hung(truss), .. Dressing(truss)];
    }

    /// <summary>The fixtures on it.</summary>
    public IReadOnlyList<FixturePlan> FixturesOn(PlacedTruss truss) => [.. lighting.Fixtures.Where(fixture => IsOn(fixture.Position?.Position, truss))];

    private bool IsOn(Position? position, PlacedTruss truss) => position is not null && brief.Gig.Rigging.At(position.Place) == truss.Truss;

    private IEnumerable<CarriedLoad> Itself(PlacedTruss truss)
    {
        var weight = StackFigures.Weight(truss.Sections, brief.Company.Policies.WeightMargin, $"{truss.Name}, its own weight");
        var length = Doubts.Of(truss.Truss.Length.Doubt);
        yield return new CarriedLoad($"{truss.Sections.Count} × {truss.Truss.Item.Or("TBC")}", weight with { RestsOn = weight.RestsOn.With(length) }, HowOf(truss.Kind), truss.Start, truss.End, 0) { Where = length };
    }

    /// <summary>One fixture with what comes with it.</summary>
    public CarriedLoad Of(FixturePlan fixture, PlacedTruss truss)
    {
        var parts = lighting.Pieces.Where(piece => piece.Address == fixture.Address || piece.Address.Text.StartsWith(fixture.Address.Text + "/", StringComparison.Ordinal));
        var weight = StackFigures.Weight(parts, brief.Company.Policies.WeightMargin, $"{fixture.Name} with what comes with it");
        return new CarriedLoad(fixture.Name, weight with { RestsOn = weight.RestsOn.With(fixture.RestsOn) }, HowOf(fixture.Piece.Kind), truss.Along(fixture.Spot), null, 0)
        {
            Where = WhereIs(fixture.Position!.Position, truss).With(fixture.Spot is null ? Doubts.Of(truss.Truss.Place.Doubt) : Doubts.None),
        };
    }

    // Along the truss from its middle; where its middle is does not enter it, and how far it is to an end does.
    private static Doubts WhereIs(Position position, PlacedTruss truss) =>
        Doubts.Of(position.Place.Doubt).With(Doubts.Of(position.Length?.Doubt)).With(Doubts.Of(truss.Truss.Length.Doubt));

    private IEnumerable<CarriedLoad> Cables(PlacedTruss truss, IReadOnlyList<FixturePlan> fixtures) =>
        leads.On(truss.Name, fixtures.Select(fixture => fixture.Name).Concat(LeadsUp.Motors(truss.Picks)).ToHashSet(StringComparer.Ordinal)) is { } ends
            ? [new CarriedLoad($"{ends.Count} leads that end on it", ends.Weight, null, truss.Start, truss.End, 0) { Where = Doubts.Of(truss.Truss.Length.Doubt) }]
            : [];

    // What holds a hang weighs with it.
    private IEnumerable<CarriedLoad> Hung(PlacedTruss truss) =>
        from hang in hangs
        from pick in hang.Picks
        where pick.Pick.Placed.Pick.Point.Is(out var name) && string.Equals(name, truss.Name, StringComparison.OrdinalIgnoreCase)
        select new CarriedLoad($"hang {pick.Pick.Name}", pick.Pick.PointAtRest, null, truss.Along(pick.Pick.Spot), null, 0) { Where = hang.Stack.RestsOn.With(truss.RestsOn) };

    private IEnumerable<CarriedLoad> Dressing(PlacedTruss truss) => brief.Gig.Rigging.Dressing
        .Where(load => string.Equals(load.Truss, truss.Name, StringComparison.OrdinalIgnoreCase))
        .Select(load => Of(load, truss));

    /// <summary>A part of its dressing.</summary>
    public CarriedLoad Of(TrussLoad load, PlacedTruss truss)
    {
        var kind = load.Item is { } item && item.Is(out var id) ? brief.Stock.Find(id) : null;
        var given = load.Weight ?? kind?.Weight;
        var one = given is { } known ? Figure.From(known) : new Figure<Mass>(null, Doubts.Of(new Doubt($"rigging / loads / {load.What} / weight", load.At, LeftOut: true)), Reason.Derived.It);
        var how = given?.How ?? Known.Estimated;
        var weight = Sum.Of(load.What, "W = n · w", Publication.Arithmetic)
            .Put("n", new Figure<int>(load.Count, Doubts.Of(load.Item?.Doubt), new Reason.Fixed(load.At)))
            .Put("w", leads.Margined(load.What, one, how))
            .Gives((count, each) => each * count);
        var isWhole = load.Along is null;
        return new CarriedLoad(
            load.Count == 1 ? load.What : FormattableString.Invariant($"{load.Count} × {load.What}"),
            weight,
            given is null ? null : how,
            isWhole ? truss.Start : Metres(load.Along),
            isWhole ? truss.End : Metres(load.To),
            Metres(load.Offset) ?? 0)
        {
            Where = Doubts.Of(load.Along?.Doubt).With(Doubts.Of(load.To?.Doubt)).With(Doubts.Of(load.Offset?.Doubt)).With(isWhole ? Doubts.Of(truss.Truss.Length.Doubt) : Doubts.None),
        };
    }

    private static double? Metres(Given<Length>? given) => given is { } known && known.Is(out var length) ? length.Meters : null;

    private static Known? HowOf(Kind? kind) => kind?.Weight?.How;
}
