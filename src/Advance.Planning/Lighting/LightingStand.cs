using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Stands positions up and puts fixtures on them.</summary>
internal sealed class LightingStand(Pieces pieces, Drawn drawn, Ground ground, Stock stock, Company company, Rigging rigging)
{
    // Decimals of a metre: nobody hangs to less.
    private const int Millimetres = 3;

    /// <summary>The positions of one row: one, or the two of a mirrored pair.</summary>
    public IEnumerable<LightingPosition> Positions(Position written)
    {
        var truss = rigging.At(written.Place);
        var position = truss is null ? written : written with { Trim = written.Trim ?? truss.Trim, Length = written.Length ?? (HungTrusses.IsWhole(written.Place) ? truss.Length : null) };
        foreach (var (name, side, _) in Mirrored.Each(position.Name, position.Sides))
        {
            var address = pieces.At(name);
            var spot = drawn.Find(position.Place, side);
            if (truss is null)
            {
                drawn.Add(address, name, Look.LightStand, position.Place, Footprint.Usual, side: side);
            }

            var carrier = position.Item is { } item ? pieces.Ask(address, name, item.Or("TBC"), from: null, spot, position.At) : null;
            Ballasts.Ask(pieces, position.Ballast, address, name, spot);
            var trim = Trim(position);
            yield return new LightingPosition(address, name, position, spot, carrier, trim, Above(spot, trim)) { RunsUpstage = truss?.RunsUpstage ?? false };
        }
    }

    /// <summary>All fixtures of a gig, each in its place.</summary>
    public IReadOnlyList<FixturePlan> Fixtures(IReadOnlyList<FixtureRow> rows, IReadOnlyList<LightingPosition> positions)
    {
        var numbered = rows
            .SelectMany(row => Enumerable.Range(row.Numbers.First, row.Numbers.Count).Select(number => (Row: row, Number: number)))
            .OrderBy(fixture => fixture.Number)
            .ThenBy(fixture => fixture.Row.At)
            .ToList();
        var spots = numbered
            .GroupBy(fixture => fixture.Row.Position, StringComparer.Ordinal)
            .SelectMany(group => Spots(positions.FirstOrDefault(position => position.Name == group.Key), [.. group]))
            .ToDictionary(found => found.Fixture, found => found.Spot);
        return [.. numbered.Select(fixture => Fixture(fixture.Row, fixture.Number, positions, spots.GetValueOrDefault(fixture)))];
    }

    private FixturePlan Fixture(FixtureRow row, int number, IReadOnlyList<LightingPosition> positions, Spot? spot)
    {
        var piece = pieces.Ask(pieces.At("fixture") / number, $"Fixture {number}, {row.Position}", row.Item.Or("TBC"), from: null, spot, row.At);
        return new FixturePlan(piece.Address, number, row, piece, positions.FirstOrDefault(position => position.Name == row.Position), spot);
    }

    private IEnumerable<((FixtureRow Row, int Number) Fixture, Spot? Spot)> Spots(LightingPosition? position, IReadOnlyList<(FixtureRow Row, int Number)> fixtures)
    {
        if (position?.Spot is not { } middle)
        {
            return fixtures.Distinct().Select(fixture => (fixture, (Spot?)null));
        }

        var kinds = fixtures.Select(fixture => fixture.Row.Item.Is(out var id) ? stock.Find(id) : null).ToList();
        var along = FixtureSpread.Of(position.Position, position.Carrier?.Kind, kinds, stock, FixtureSpread.CountsFromStageLeft(company));
        return fixtures.Select((fixture, index) => (fixture, (Spot?)Along(middle, along[index], position.RunsUpstage))).DistinctBy(found => found.fixture);
    }

    private static Spot Along(Spot middle, double by, bool upstage) => upstage
        ? middle with { Y = Math.Round(middle.Y + by, Millimetres, MidpointRounding.AwayFromZero) }
        : middle with { X = Math.Round(middle.X + by, Millimetres, MidpointRounding.AwayFromZero) };

    // Above the floor. What is left out is a question, since leads must reach up there.
    private Figure<Length> Trim(Position position)
    {
        if (position.Trim is not { } trim)
        {
            var missing = new Doubt($"lighting / positions / {position.Name} / trim", position.At, LeftOut: true);
            return new Figure<Length>(null, Doubts.Of(missing), Reason.Derived.It);
        }

        return trim.Is(out var height) && height.Above == HeightFrom.Deck
            ? Sum.Of("trim above the floor", "t = d + h", Publication.Arithmetic)
                .Put("d", ground.DeckHeight)
                .Put("h", Figure.From(trim.Select(written => written.Height)))
                .Gives((deck, up) => deck + up)
            : Ground.HeightOf(trim);
    }

    private Figure<Length> Above(Spot? spot, Figure<Length> trim) =>
        Sum.Of("height above what is below", "h = t - g", Publication.Arithmetic)
            .Put("t", trim)
            .Put("g", ground.HeightAt(spot))
            .Gives((top, below) => top - below);
}
