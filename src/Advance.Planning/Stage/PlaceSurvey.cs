using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Naming;
using Advance.Domain.Places;
using Advance.Domain.Venues;

namespace Advance.Planning;

/// <summary>Finds out whether the names that places were said by mean something. An open place is asked about already and is no matter here.</summary>
internal static class PlaceSurvey
{
    /// <summary>Every name that a place was said by, in the order in which it was first used.</summary>
    public static IReadOnlyList<NamedPlace> Of(Gig gig, Venue venue, Ground ground)
    {
        var used = Places(gig, venue)
            .Where(use => use.Place is { IsKnown: true })
            .Select(use => (use.User, use.Place!.Value.At, Name: NameOf(use.Place!.Value.Value)))
            .Where(use => use.Name is not null)
            .ToList();
        return [.. used.GroupBy(use => use.Name!, StringComparer.OrdinalIgnoreCase).Select(uses => Judge(uses.Key, [.. uses.Select(use => use.User)], uses.Min(use => use.At), ground))];
    }

    private static NamedPlace Judge(string name, IReadOnlyList<string> users, Mark at, Ground ground)
    {
        var place = new Place.AtThing(name);
        var missing = ground.Unknown(place);
        var isKnown = missing is null || !string.Equals(missing, name, StringComparison.OrdinalIgnoreCase);
        var nearest = isKnown ? null : Nearest.To(name, ground.Names);
        return new NamedPlace(Address.Of("stage") / "places" / name, name, isKnown, ground.Circle(name), nearest, [.. users.Distinct(StringComparer.Ordinal)], at);
    }

    private static string? NameOf(Place place) => place switch
    {
        Place.AtThing thing => thing.Name,
        Place.Measured measured => measured.Of,
        _ => null,
    };

    private static IEnumerable<(string User, Given<Place>? Place)> Places(Gig gig, Venue venue) =>
    [
        .. gig.Stages.SelectMany(stage => stage.Steps is { } steps ? stage.Things.Prepend(steps) : stage.Things).Select(Use),
        .. gig.Around.Select(Use),
        .. gig.Acts.SelectMany(act => act.Backline).Select(Use),
        .. Devices(gig).Select(device => (device.Name, device.Place)),
        .. gig.Sound.Piles.SelectMany(stack => new[] { (stack.Name, (Given<Place>?)stack.Place), (stack.Name, stack.HeardAt), (stack.Name, Target(stack)) }),
        .. gig.Rigging.Trusses.Select(truss => (truss.Name, (Given<Place>?)truss.Place)),
        .. gig.Lighting.Positions.Select(position => (position.Name, (Given<Place>?)position.Place)),
        .. gig.Acts.SelectMany(act => act.Inputs).Concat(gig.Sound.AlwaysLive).Select(row => (row.Source, row.Place)),
        .. gig.Acts.SelectMany(act => act.Mixes).Select(row => ($"the mix for {row.For}", row.Place)),
        .. (venue.RoofPoints.Is(out var points) ? points : []).Select(point => ($"point {point.Name}", (Given<Place>?)point.Place)),
        .. venue.KeepClear.Select(clear => (clear.What, (Given<Place>?)clear.Place)),
    ];

    private static IEnumerable<Device> Devices(Gig gig)
    {
        var devices = gig.Sound.Devices.Concat(gig.Power.Distributions);
        return gig.Lighting.Control is { } desk ? devices.Append(desk) : devices;
    }

    private static Given<Place>? Target(Stack stack) =>
        stack.Aim is { } given && given.Is(out var aim) && aim is Aim.AtPlace at ? Given.Of(at.Target, given.At) : null;

    private static (string User, Given<Place>? Place) Use(Thing thing) => (thing.Name, thing.Place);
}
