using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Finds what each truss carries: itself, fixtures with what comes with them, their cables as picked, and its dressing.</summary>
internal sealed class TrussLoads(Brief brief, LightingPlan lighting, CablePlan cables)
{
    private const string Margin = "weight-margin";

    /// <summary>Everything, itself first.</summary>
    public IReadOnlyList<CarriedLoad> Of(PlacedTruss truss)
    {
        var fixtures = lighting.Fixtures.Where(fixture => IsOn(fixture.Position?.Position, truss)).ToList();
        return [.. Itself(truss), .. fixtures.Select(fixture => Of(fixture, truss)), .. Cables(truss, fixtures), .. Dressing(truss)];
    }

    private static bool IsOn(Position? position, PlacedTruss truss) =>
        position is not null && position.Place.Is(out var place) && place is Domain.Places.Place.AtThing at && string.Equals(at.Name, truss.Name, StringComparison.OrdinalIgnoreCase);

    private IEnumerable<CarriedLoad> Itself(PlacedTruss truss)
    {
        var weight = StackFigures.Weight(truss.Sections, brief.Company.Policies.WeightMargin, $"{truss.Name}, its own weight");
        yield return new CarriedLoad($"{truss.Sections.Count} x {truss.Truss.Item.Or("TBC")}", weight, HowOf(truss.Kind), 0, LengthOf(truss), 0);
    }

    private CarriedLoad Of(FixturePlan fixture, PlacedTruss truss)
    {
        var parts = lighting.Pieces.Where(piece => piece.Address == fixture.Address || piece.Address.Text.StartsWith(fixture.Address.Text + "/", StringComparison.Ordinal));
        var weight = StackFigures.Weight(parts, brief.Company.Policies.WeightMargin, $"{fixture.Name} with what comes with it");
        return new CarriedLoad(fixture.Name, weight with { RestsOn = weight.RestsOn.With(fixture.RestsOn) }, HowOf(fixture.Piece.Kind), truss.Along(fixture.Spot), null, 0);
    }

    // All of each lead that ends on the truss, spread over it: at most what it can be, since a part of it lies on the floor.
    private IEnumerable<CarriedLoad> Cables(PlacedTruss truss, IReadOnlyList<FixturePlan> fixtures)
    {
        var names = fixtures.Select(fixture => fixture.Name).ToHashSet(StringComparer.Ordinal);
        var leads = cables.Runs.Where(run => run.Links.Any(link => names.Contains(link.From.Port.Device) || names.Contains(link.To.Port.Device))).SelectMany(run => run.Leads).ToList();
        if (leads.Count == 0)
        {
            yield break;
        }

        var weight = Sum.Of($"{truss.Name}, leads that end on it", "W = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", leads.Select(WeightOf))
            .Gives(terms => Mass.FromKilograms(terms.Values.Sum(one => one.Kilograms)));
        yield return new CarriedLoad($"{leads.Count} leads that end on it", weight with { RestsOn = weight.RestsOn.With(cables.RestsOn) }, null, 0, LengthOf(truss), 0);
    }

    private Figure<Mass> WeightOf(Kind lead) => lead.Cable!.WeightPerLength is { } given
        ? Sum.Of($"weight of {lead.Id}", "w = m · l", Publication.Arithmetic).Put("m", Figure.From(given)).Put("l", Figure.From(lead.Cable.Length)).Gives((per, length) => Mass.FromKilograms(per.KilogramsPerMeter * length.Meters))
        : Margined(lead.Id, lead.Weight is { } weight ? Figure.From(weight) : Unknown, lead.Weight?.How ?? Known.Estimated);

    private IEnumerable<CarriedLoad> Dressing(PlacedTruss truss) => brief.Gig.Rigging.Dressing
        .Where(load => string.Equals(load.Truss, truss.Name, StringComparison.OrdinalIgnoreCase))
        .Select(load => Of(load, truss));

    private CarriedLoad Of(TrussLoad load, PlacedTruss truss)
    {
        var kind = load.Item is { } item && item.Is(out var id) ? brief.Stock.Find(id) : null;
        var given = load.Weight ?? kind?.Weight;
        var one = given is { } known ? Figure.From(known) : new Figure<Mass>(null, Doubts.Of(new Doubt($"rigging / loads / {load.What} / weight", load.At, LeftOut: true)), Reason.Derived.It);
        var how = given?.How ?? Known.Estimated;
        var weight = Sum.Of(load.What, "W = n · w", Publication.Arithmetic)
            .Put("n", new Figure<int>(load.Count, Doubts.Of(load.Item?.Doubt), new Reason.Fixed(load.At)))
            .Put("w", Margined(load.What, one, how))
            .Gives((count, each) => each * count);
        var isWhole = load.Along is null;
        return new CarriedLoad(
            load.Count == 1 ? load.What : FormattableString.Invariant($"{load.Count} x {load.What}"),
            weight,
            given is null ? null : how,
            isWhole ? 0 : Metres(load.Along),
            isWhole ? LengthOf(truss) : Metres(load.To),
            Metres(load.Offset) ?? 0);
    }

    private Figure<Mass> Margined(string what, Figure<Mass> mass, Known how) =>
        Sum.Of($"weight of {what}", "w = m · (1 + g / 100)", Publication.CommonPractice)
            .Put("m", mass)
            .Put("g", Figure.Policy(Margin, brief.Company.Policies.WeightMargin.On(how)))
            .Gives((bare, margin) => bare * (1 + (margin / 100)));

    private static Figure<Mass> Unknown => new(null, Doubts.None, Reason.Derived.It);

    private static double? LengthOf(PlacedTruss truss) => truss.Truss.Length.Is(out var length) ? length.Meters : null;

    private static double? Metres(Given<Length>? given) => given is { } known && known.Is(out var length) ? length.Meters : null;

    private static Known? HowOf(Kind? kind) => kind?.Weight?.How;
}
