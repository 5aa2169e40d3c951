using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>Places lighting stands, fixtures and their desk, gives each fixture its address, and runs control to it.</summary>
public static class LightingDepartment
{
    private const string Name = "lighting";

    /// <summary>Places it all.</summary>
    /// <param name="gig">As written.</param>
    /// <param name="stock">What there is.</param>
    /// <param name="ground">Where places are found.</param>
    /// <param name="company">Which way it counts fixtures; null for from stage right.</param>
    public static LightingPlacement Place(Gig gig, Stock stock, Ground ground, Company? company = null)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        var desk = gig.Lighting.Control is { } control ? ground.Find(control.Place) : null;
        if (gig.Lighting.Control is { } asked)
        {
            pieces.Ask(pieces.At("control"), asked.Name, asked.Item.Or("TBC"), asked.From, desk, asked.At);
        }

        var stand = new LightingStand(pieces, drawn, ground, stock, company ?? Company.Default, gig.Rigging);
        var positions = gig.Lighting.Positions.SelectMany(stand.Positions).ToList();
        var fixtures = stand.Fixtures(gig.Lighting.Fixtures, positions);
        var margins = (company ?? Company.Default).Policies.WeightMargin;
        return new LightingPlacement(pieces.Made, drawn.Things, [.. positions.Select(position => Loaded(position, fixtures, pieces.Made, margins))], fixtures, desk);
    }

    private static LightingPosition Loaded(LightingPosition position, IReadOnlyList<FixturePlan> fixtures, IReadOnlyList<Piece> made, WeightMargins margins)
    {
        var hung = fixtures.Where(fixture => fixture.Position?.Address == position.Address).Select(fixture => fixture.Address).ToList();
        var doubts = fixtures.Where(fixture => hung.Contains(fixture.Address)).Aggregate(Doubts.None, (sum, fixture) => sum.With(Doubts.Of(fixture.Row.Item.Doubt)));
        var weight = StackFigures.Weight(made.Where(piece => hung.Exists(address => IsPartOf(piece, address))), margins, "weight that hangs");
        return position with { Carries = weight with { RestsOn = weight.RestsOn.With(doubts) } };
    }

    private static bool IsPartOf(Piece piece, Address whole) =>
        piece.Address == whole || piece.Address.Text.StartsWith(whole.Text + "/", StringComparison.Ordinal);

    /// <summary>Chooses addresses and lines.</summary>
    public static LightingPlan Choose(Gig gig, Stock stock, Policies policies, LightingPlacement placed, Choices earlier)
    {
        var free = KeptFree(policies.FreeSlots);
        var fixtures = new SlotBook(Universes(gig, stock), free.Value ?? 0, earlier).Assign(placed.Fixtures);
        var pieces = new Pieces(Name, stock);
        var lines = new ControlLines(gig, stock, policies, placed, pieces);
        var made = lines.Of(fixtures);
        var uses = Uses(fixtures, free);
        return new LightingPlan(
            [.. placed.Pieces, .. pieces.Made],
            placed.Things,
            [.. made.SelectMany(lines.Feed), .. made.SelectMany(lines.Links)],
            [.. placed.Positions.SelectMany(Heights), .. uses.SelectMany(use => use.Figures), .. made.SelectMany(line => line.Figures)],
            new Choices(fixtures.Where(fixture => fixture.At is not null).Select(fixture => new KeyValuePair<Address, string>(fixture.Address, fixture.At!.Value.ToString()))))
        {
            Positions = placed.Positions,
            Fixtures = fixtures,
            Lines = made,
            Universes = uses,
            DeskUniverses = Universes(gig, stock),
        };
    }

    // Each control output of a desk sends one.
    private static int? Universes(Gig gig, Stock stock)
    {
        var kind = gig.Lighting.Control is { } desk && desk.Item.Is(out var id) ? stock.Find(id) : null;
        return kind is null || kind.Ports.Count == 0
            ? null
            : kind.Ports.Where(row => row.Port == PortKind.Output && row.Signal == FixturePlan.Signal).Sum(row => row.Count);
    }

    private static Figure<int> KeptFree(Share free) =>
        Sum.Of("slots kept free", "f = max(m, ⌈p · n / 100⌉), or 0 where n = 0", Publication.CommonPractice)
            .Put("m", Figure.Policy("free-slots", free.AtLeast))
            .Put("p", Figure.Policy("free-slots", free.Percent))
            .Put("n", Figure.Count(LightingControl.SlotsInUniverse))
            .Gives(Spares.Of);

    private static List<UniverseUse> Uses(IReadOnlyList<FixturePlan> fixtures, Figure<int> free) =>
    [
        .. fixtures.Where(fixture => fixture.At is not null)
            .GroupBy(fixture => fixture.At!.Value.Universe)
            .OrderBy(universe => universe.Key)
            .Select(universe => new UniverseUse(Address.Of(Name) / "universe" / universe.Key, universe.Key, Used(universe), free)),
    ];

    private static Figure<int> Used(IEnumerable<FixturePlan> fixtures) =>
        Sum.Of("slots used", "s = Σ sᵢ", AnsiE111.Slots)
            .PutAll("sᵢ", fixtures.DistinctBy(fixture => (fixture.At, fixture.Mode)).Select(fixture => new Figure<int>(fixture.Mode?.Slots, fixture.ControlDoubts, Reason.Derived.It)))
            .Gives(terms => terms.Values.Sum());

    private static IEnumerable<Stated> Heights(LightingPosition position)
    {
        if (position.Position.Trim is not null)
        {
            yield return Stated.Of(position.Address / "trim", $"{position.Name}, trim above the floor", position.Trim);
            yield return Stated.Of(position.Address / "height", $"{position.Name}, height above what is below", position.Height);
        }

        if (position.Carries.Value is not { Kilograms: 0 })
        {
            yield return Stated.Of(position.Address / "carries", $"{position.Name}, weight that hangs on it", position.Carries);
        }
    }
}
