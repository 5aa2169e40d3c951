using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>Places what stands on the stage and around it: decks, steps, risers, backline, and what must stay clear.</summary>
public static class StageDepartment
{
    private const string Name = "stage";

    /// <summary>The ground that all departments place on. A gig without a stage has a ground of unknown size.</summary>
    public static Ground Survey(Gig gig)
    {
        var stage = gig.Stages.Count > 0 ? gig.Stages[0] : null;
        var ground = new Ground(stage?.Size ?? default, stage?.Height ?? default, stage is not null);
        foreach (var thing in EverythingNamed(gig))
        {
            ground.Name(thing.Name, thing.Place);
        }

        foreach (var device in gig.Sound.Devices.Concat(gig.Power.Distributions))
        {
            if (device.Place is { } place)
            {
                ground.Name(device.Name, place);
            }
        }

        foreach (var truss in gig.Rigging.Trusses)
        {
            ground.Name(truss.Name, truss.Place);
        }

        var mirrored = gig.Sound.Piles.Select(stack => (stack.Name, stack.Sides, stack.Place))
            .Concat(gig.Lighting.Positions.Select(position => (position.Name, position.Sides, position.Place)));
        foreach (var (name, sides, place) in mirrored)
        {
            foreach (var one in Mirrored.Each(name, sides))
            {
                ground.Name(one.Name, place, one.Side);
            }
        }

        return ground;
    }

    /// <summary>Places it all.</summary>
    public static StagePlan Place(Gig gig, Venue venue, Stock stock, Ground ground)
    {
        var pieces = new Pieces(Name, stock);
        var drawn = new Drawn(ground);
        foreach (var stage in gig.Stages)
        {
            PlaceDeck(stage, pieces);
            Stand(stage.Things, act: null, OwnerKind.Shop, pieces, drawn);
            if (stage.Steps is { } steps)
            {
                PlaceSteps(steps, stock, pieces, drawn);
            }
        }

        Stand(gig.Around, act: null, OwnerKind.Shop, pieces, drawn);
        foreach (var act in gig.Acts)
        {
            Stand(act.Backline, act.Name, OwnerKind.Act, pieces, drawn);
        }

        foreach (var clear in venue.KeepClear)
        {
            var wide = clear.Wide is { } width && width.Is(out var known) ? known.Meters : 1;
            drawn.Add(pieces.At("keep-clear") / clear.What, clear.What, Look.KeepClear, clear.Place, new Footprint(wide, wide));
        }

        var decks = gig.Stages.Select(stage => DeckCount.Of(stage, AddressOf(stage), stock)).OfType<DeckPlan>().ToList();
        return new StagePlan(gig.Stages, pieces.Made, drawn.Things)
        {
            Outline = ground.Outline,
            StandsAt = StagePlaces.Of(gig.Stages, venue),
            Datum = gig.Stages.Count > 0 && VenueDatum.EdgeOf(gig.Stages[0], venue) is { } edge ? new Spot(-edge.X, -edge.Y) : null,
            Edges = [.. gig.Stages.SelectMany(stage => StageEdgeSurvey.Of(stage, AddressOf(stage), stock, ground))],
            Decks = decks,
            Places = PlaceSurvey.Of(gig, venue, ground),
            Figures =
            [
                .. gig.Stages.Select(stage => Stated.Of(AddressOf(stage) / "height", $"height of {stage.Name}", Ground.HeightOf(stage.Height))),
                .. decks.Select(deck => Stated.Of(deck.Address / "wanted", $"decks wanted for {deck.Stage.Name}", deck.Wanted)),
            ],
        };
    }

    // The only stage of a gig is called what the department is.
    private static Address AddressOf(Stage stage) => stage.Name == Name ? Address.Of(Name) : Address.Of(Name) / stage.Name;

    // Steps that lead up from the side are turned, so that their width lies along the edge.
    private static void PlaceSteps(Thing steps, Stock stock, Pieces pieces, Drawn drawn)
    {
        var covers = Footprint.Of(steps.Item is { } item ? stock.Find(item) : null, steps.Size);
        var edge = StageEdgeSurvey.EdgeOf(drawn.Find(steps.Place), covers, drawn.Ground.Outline);
        var turn = edge is StageEdges.StageRight or StageEdges.StageLeft ? 90 : 0;
        Stand([steps], act: null, OwnerKind.Shop, pieces, drawn, Look.Steps, turn);
    }

    private static IEnumerable<Thing> EverythingNamed(Gig gig) =>
        gig.Stages.SelectMany(stage => stage.Things).Concat(gig.Around).Concat(gig.Acts.SelectMany(act => act.Backline));

    private static void PlaceDeck(Stage stage, Pieces pieces)
    {
        if (stage.Decks is not { } decks)
        {
            return;
        }

        for (var number = 1; number <= decks.Count; number++)
        {
            pieces.Ask(pieces.At(stage.Name) / "deck" / number, $"Deck {number}", decks.Item, from: null, spot: null, stage.At);
        }
    }

    private static void Stand(
        IEnumerable<Thing> things, string? act, OwnerKind owner, Pieces pieces, Drawn drawn, Look? look = null, double turn = 0)
    {
        foreach (var thing in things)
        {
            var from = thing.From ?? Given.Of(new Owner(thing.Item is null ? NotTheShop(owner) : owner, act), thing.At);
            var address = act is null ? pieces.At(thing.Name) : pieces.At(act) / thing.Name;
            var spot = drawn.Find(thing.Place);
            var piece = pieces.Ask(address, thing.Name, thing.Item ?? thing.Name, from, spot, thing.At);
            drawn.Add(piece.Address, thing.Name, look ?? LookOf(thing, piece.Kind), thing.Place, Footprint.Of(piece.Kind, thing.Size), act, turn: turn);
        }
    }

    // What has no kind is somebody else's: the shop pulls only what it can name.
    private static OwnerKind NotTheShop(OwnerKind owner) => owner == OwnerKind.Shop ? OwnerKind.Venue : owner;

    // A carpet or a riser is flat; what has no kind and is large is a marked-out floor.
    private static Look LookOf(Thing thing, Kind? kind)
    {
        var covers = Footprint.Of(kind, thing.Size);
        var isFlat = kind?.Size is { } size && size.Is(out var known) && known.Height is { } height && height.Meters < 0.1;
        return isFlat || (kind is null && covers.Width * covers.Depth >= 2) ? Look.Area : Look.Box;
    }
}
