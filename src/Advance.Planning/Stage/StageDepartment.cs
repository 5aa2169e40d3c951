using Advance.Domain.Facts;
using Advance.Domain.Gigs;
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
        var ground = new Ground(gig.Stages.Count > 0 ? gig.Stages[0].Size : default);
        foreach (var thing in EverythingNamed(gig))
        {
            ground.Name(thing.Name, thing.Place);
        }

        foreach (var device in gig.Sound.StageBoxes.Concat(gig.Sound.Consoles).Concat(gig.Sound.Processors).Concat(gig.Power.Distributions))
        {
            if (device.Place is { } place)
            {
                ground.Name(device.Name, place);
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
                Stand([steps], act: null, OwnerKind.Shop, pieces, drawn, Look.Steps);
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

        return new StagePlan(gig.Stages, pieces.Made, drawn.Things);
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
        IEnumerable<Thing> things, string? act, OwnerKind owner, Pieces pieces, Drawn drawn, Look? look = null)
    {
        foreach (var thing in things)
        {
            var from = thing.From ?? Given.Of(new Owner(thing.Item is null ? NotTheShop(owner) : owner, act), thing.At);
            var address = act is null ? pieces.At(thing.Name) : pieces.At(act) / thing.Name;
            var spot = drawn.Find(thing.Place);
            var piece = pieces.Ask(address, thing.Name, thing.Item ?? thing.Name, from, spot, thing.At);
            drawn.Add(piece.Address, thing.Name, look ?? LookOf(thing, piece.Kind), thing.Place, Footprint.Of(piece.Kind, thing.Size), act);
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
