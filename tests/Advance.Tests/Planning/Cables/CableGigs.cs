using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Places;
using Advance.Domain.Stocks;
using Advance.Domain.Venues;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning;

/// <summary>Stages, links and leads made in code.</summary>
internal static class CableGigs
{
    /// <summary>A gig on a deck of 8 x 5 m, 0.6 m high.</summary>
    public static Gig OnDeck(params CableWay[] ways) => Gigs.Gig() with { Stages = [Stage(8, 5, 0.6)], CableWays = ways };

    public static Stage Stage(double width, double depth, double height) => Stage(
        Given.Of(new Size(Length.FromMeters(width), Length.FromMeters(depth)), Gigs.Here),
        Given.Of(new HeightFrom(Length.FromMeters(height), HeightFrom.Floor), Gigs.Here));

    public static Stage Stage(Given<Size> size, Given<HeightFrom> height) => new("stage", size, height, null, null, null, null, [], Gigs.Here);

    public static CableWay Way(string name, string laid, params (double X, double Y)[] corners)
    {
        var along = corners.Select(corner => At(corner.X, corner.Y)).ToList();
        return new CableWay(name, along[0], along[^1], along[1..^1], laid, Gigs.Here);
    }

    public static Given<Place> At(double x, double y) => Given.Of<Place>(new Place.AtPoint(Length.FromMeters(x), Length.FromMeters(y), null), Gigs.Here);

    public static Routes Routes(Gig gig, params KeepClear[] keep) =>
        Advance.Planning.Routes.Survey(gig, new Venue { KeepClear = keep }, StageDepartment.Survey(gig), CablePolicies.Default);

    public static KeepClear Keep(string what, double x, double y, double wide) => new(what, At(x, y), Given.Of(Length.FromMeters(wide), Gigs.Here), "", Gigs.Here);

    public static LinkEnd End(string device, PortKind kind, int? number, string connector, double x, double y, double height = 0) =>
        new(new Port(device, kind, number), connector, new Spot(x, y), height);

    public static Link Link(string name, LinkEnd from, LinkEnd to, string carries, Doubts? restsOn = null) =>
        new(Address.Of("link") / name, from, to, carries, restsOn ?? Doubts.None, Gigs.Here);

    /// <summary>A microphone to the stage box SB1 upstage right.</summary>
    public static Link Mic(int port, double x, double y) =>
        Link($"line {port}", End($"source {port}", PortKind.Output, null, "xlr-3", x, y), End("SB1", PortKind.Input, port, "xlr-3", -3.5, 4.5), "mic-line");

    /// <summary>A circuit from the distribution PD1 upstage left to a unit.</summary>
    public static Link Circuit(int outlet, double x, double y, string inlet = "locking mains 20 A") =>
        Link($"circuit {outlet}", End("PD1", PortKind.Outlet, outlet, "16 A blue", 3.6, 4.7), End($"unit {outlet}", PortKind.Input, null, inlet, x, y), "mains");

    public static Kind Lead(string id, string carries, string a, string b, double metres, int owned = 100) => Gigs.Kind(id, owned) with
    {
        Role = Role.Cable,
        Cable = new Cable(carries, a, b, Given.Of(Length.FromMeters(metres), Gigs.Here), "", 0, null),
    };

    public static Kind Mic(double metres, int owned = 100) => Lead($"mic-{metres}", "mic-line", "xlr-3 male", "xlr-3 female", metres, owned);

    public static Kind Mains(double metres, int owned = 100) => Lead($"mains-{metres}", "mains", "16 A blue male", "16 A blue female", metres, owned);

    public static Kind ToLocking(double metres, int owned = 100) => Lead($"locking-{metres}", "mains", "16 A blue male", "locking mains 20 A female", metres, owned);

    public static Kind LinkLead(double metres, int owned = 100) => Lead($"link-{metres}", "mains", "locking mains 20 A male", "locking mains 20 A female", metres, owned);

    public static CablePlan Plan(Gig gig, IReadOnlyList<Link> links, IReadOnlyList<Kind> kinds, Choices? earlier = null, IReadOnlyList<Piece>? pieces = null)
    {
        Brief brief = Gigs.Brief(gig, [.. kinds]);
        return CableDepartment.Choose(brief, links, pieces ?? [], Routes(gig), earlier ?? Choices.None);
    }

    public static Run Only(Gig gig, Link link, params Kind[] kinds) => Assert.Single(Plan(gig, [link], kinds).Runs);

    /// <summary>What each run is made of, by its label.</summary>
    public static IReadOnlyList<string> Made(CablePlan plan) => [.. plan.Runs.Select(run => $"{run.Label}: {string.Join(" + ", run.Leads.Select(lead => lead.Id))}")];
}
