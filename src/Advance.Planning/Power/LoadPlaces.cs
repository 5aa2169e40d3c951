using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Where loads are and what they are for, by the addresses of their pieces. What goes with a piece is where that piece is.</summary>
internal sealed class LoadPlaces
{
    private readonly Dictionary<Address, LoadPlace> places = new()
    {
        [Address.Of("sound")] = new(PowerUse.Sound),
        [Address.Of("patch")] = new(PowerUse.Sound),
        [Address.Of("lighting")] = new(PowerUse.Lighting),
    };

    private LoadPlaces()
    {
    }

    /// <summary>Goes through a gig.</summary>
    public static LoadPlaces Of(Brief brief, Ground ground)
    {
        var (gig, stock) = (brief.Gig, brief.Stock);
        var found = new LoadPlaces();
        foreach (var name in gig.Sound.Stacks.SelectMany(stack => Mirrored.Each(stack.Name, stack.Sides)).Select(one => one.Name))
        {
            found.places[Address.Of("sound") / name] = new LoadPlace(PowerUse.Loudspeaker);
        }

        foreach (var hang in gig.Sound.Hangs)
        {
            found.PlaceHang(hang, stock, ground);
        }

        foreach (var act in gig.Acts)
        {
            found.places[Address.Of("stage") / act.Name] = new LoadPlace(PowerUse.Backline, Act: act.Name);
            foreach (var mix in act.Mixes)
            {
                var number = mix.Numbers.First;
                found.places[Address.Of("patch") / act.Name / "mix" / number / "heard"] =
                    new LoadPlace(PowerUse.Monitor, $"{(gig.Acts.Count > 1 ? act.Name + " " : "")}mix {number} {mix.For}", Act: act.Name);
            }
        }

        found.PlaceFixtures(gig, ground);
        foreach (var (address, hoist) in HoistPlaces.Of(brief, ground))
        {
            found.places[address] = hoist;
        }

        return found;
    }

    /// <summary>The place of a piece, or of the nearest one that it belongs to.</summary>
    public LoadPlace Find(Address address)
    {
        for (var text = address.Text; text.Length > 0; text = Whole(text))
        {
            if (places.TryGetValue(Address.Read(text), out var place))
            {
                return place;
            }
        }

        return new LoadPlace(PowerUse.Other);
    }

    private void PlaceHang(Stack hang, Stock stock, Ground ground)
    {
        foreach (var one in Mirrored.Each(hang.Name, hang.Sides))
        {
            var heights = HangHeights.Of(hang, HangItems.Of(hang, stock).Boxes.Select(box => stock.Find(box.Item)), ground, ground.Find(hang.Place, one.Side));
            for (var position = 1; position <= heights.Count; position++)
            {
                places[Address.Of("sound") / one.Name / position] = new LoadPlace(PowerUse.Loudspeaker, Height: heights[position - 1]) { RestsOn = HangHeights.RestsOn(hang) };
            }
        }
    }

    private static string Whole(string text) => text.LastIndexOf('/') is var at and > 0 ? text[..at] : "";

    private void PlaceFixtures(Gig gig, Ground ground)
    {
        var positions = gig.Lighting.Positions
            .SelectMany(position => Mirrored.Each(position.Name, position.Sides).Select(one => (Position: position, one.Name, one.Side)))
            .ToLookup(one => one.Name, StringComparer.OrdinalIgnoreCase);
        foreach (var row in gig.Lighting.Fixtures)
        {
            var (position, _, side) = positions[row.Position].FirstOrDefault();
            var spot = position is null ? null : ground.Find(position.Place, side);
            for (var number = row.Numbers.First; number <= row.Numbers.Last; number++)
            {
                places[Address.Of("lighting") / "fixture" / number] =
                    new LoadPlace(PowerUse.Lighting, Spot: spot, Height: position is null ? null : Above(TrimOf(position, gig), gig, spot)) { RestsOn = RestsOn(position, gig) };
            }
        }
    }

    // A trim is said from the floor or from the deck, and what hangs over the deck hangs so much less above what is under it.
    internal static double? Above(Given<HeightFrom>? given, Gig gig, Spot? spot)
    {
        if (given is not { } written || !written.Is(out var trim))
        {
            return null;
        }

        var deck = gig.Stages is [{ Height: { } height }, ..] && height.Is(out var known) ? known.Height.Meters : 0;
        var above = trim.Height.Meters;
        return (trim.Above, IsOnDeck(gig, spot)) switch
        {
            (HeightFrom.Floor, true) => above - deck,
            (HeightFrom.Deck, false) => above + deck,
            _ => above,
        };
    }

    // A position at a truss hangs as high as that.
    private static Given<HeightFrom>? TrimOf(Position position, Gig gig) => position.Trim ?? (gig.Rigging.At(position.Place) is { } truss ? truss.Trim : null);

    private static Doubts RestsOn(Position? position, Gig gig) => position is null ? Doubts.None : Doubts.Of(position.Place.Doubt).With(Doubts.Of(TrimOf(position, gig)?.Doubt));

    private static bool IsOnDeck(Gig gig, Spot? spot) =>
        spot is { } at && gig.Stages is [{ } stage, ..] && stage.Size.Is(out var size)
            && Math.Abs(at.X) <= size.Width.Meters / 2 && at.Y >= 0 && at.Y <= size.Depth.Meters;
}
