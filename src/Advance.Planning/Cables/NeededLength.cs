using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>How long a lead must be: path and slack, what it climbs, and what is left at its ends.</summary>
/// <param name="routes">Where leads may lie.</param>
/// <param name="climb">How much lead the edge of the deck takes.</param>
/// <param name="policies">Slack, ramps, drops.</param>
internal sealed class NeededLength(Routes routes, Figure<Length> climb, CablePolicies policies)
{
    // What is higher hangs, and its lead comes down to the floor; common practice.
    private const double Hanging = 2;

    /// <summary>The way between the ends of a link; null where one of them is nowhere.</summary>
    public Route? RouteOf(Link link) => link is { From.Spot: { } from, To.Spot: { } to }
        ? AreInTheAir(link) ? routes.InTheAir(from, to) : routes.Find(from, to)
        : null;

    /// <summary>The length with its working; unknown where there is no way.</summary>
    public Figure<Length> Of(Link link, Route? route, RunUse use) => route is null
        ? new Figure<Length>(null, link.RestsOn, Reason.Derived.It)
        : Sum.Of("length needed", "L = p · (1 + s / 100) + r + t", Publication.CommonPractice)
            .Put("p", route.Figure(link.RestsOn))
            .Put("s", Figure.Policy("cables / slack", policies.Slack))
            .Put("r", Rises(link, route))
            .Put("t", Trims(link, use))
            .Gives((path, slack, rises, trims) => (path * (1 + (slack / 100))) + rises + trims);

    private Figure<Length> Rises(Link link, Route route)
    {
        var (climbs, ramps, heights) = (Climbs(route), Ramps(route), Heights(link));
        return climbs.How is null && ramps.How is null && heights.How is null
            ? new Figure<Length>(Length.Zero, Doubts.None, Reason.Derived.It)
            : Sum.Of("up and down", "r = a + b + h", Publication.Arithmetic)
                .Put("a", climbs)
                .Put("b", ramps)
                .Put("h", heights)
                .Gives((edges, bridges, ends) => edges + bridges + ends);
    }

    private Figure<Length> Climbs(Route route) => route.Climbs == 0 ? Nothing : Sum.Of("up and down the edge of the deck", "a = n · c", Publication.CommonPractice)
        .Put("n", Figure.Count(route.Climbs))
        .Put("c", climb)
        .Gives((count, each) => each * count);

    private Figure<Length> Ramps(Route route)
    {
        var ramps = route.Ways.Select(WayLaid.Ramps).ToList();
        return ramps.All(count => count.Value == 0) ? Nothing : Sum.Of("over ramps", "b = k · m", Publication.CommonPractice)
            .Put("k", Figure.Policy("cables / ramp", policies.Ramp))
            .Put("m", Sum.Of("ramps", "m = Σ nᵢ", Publication.Arithmetic).PutAll("nᵢ", ramps).Gives(counts => counts.Values.Sum()))
            .Gives((each, count) => each * count);
    }

    private Figure<Length> Heights(Link link)
    {
        var (from, to) = (HeightOf(link.From, link), HeightOf(link.To, link));
        if (link is { From.Height: 0, To.Height: 0 })
        {
            return Nothing;
        }

        if (AreInTheAir(link) || AreAtOnePlace(link))
        {
            return Sum.Of("between the heights of the ends", "h = |u - v|", Publication.Arithmetic)
                .Put("u", from)
                .Put("v", to)
                .Gives((one, other) => one > other ? one - other : other - one);
        }

        return Sum.Of("down from the ends", "h = u + v + n · f", Publication.CommonPractice)
            .Put("u", from)
            .Put("v", to)
            .Put("n", Figure.Count((IsHanging(link.From) ? 1 : 0) + (IsHanging(link.To) ? 1 : 0)))
            .Put("f", Figure.Policy("cables / drop-floor", policies.DropFloor))
            .Gives((one, other, count, floor) => one + other + (floor * count));
    }

    private Figure<Length> Trims(Link link, RunUse use) => Sum.Of("end trims", "t = a + b", Publication.CommonPractice)
        .Put("a", TrimOf(link.From, use.TrimFrom))
        .Put("b", TrimOf(link.To, use.TrimTo))
        .Gives((one, other) => one + other);

    private Figure<Length> TrimOf(LinkEnd end, Figure<Length> trim) => IsHanging(end) ? Figure.Policy("cables / drop-truss", policies.DropTruss) : trim;

    private bool AreInTheAir(Link link) =>
        IsHanging(link.From) && IsHanging(link.To) && link is { From.Spot: { } from, To.Spot: { } to } && routes.AreNear(from, to);

    private static bool AreAtOnePlace(Link link) => link is { From.Spot: { } from, To.Spot: { } to } && from.To(to) < 0.1;

    private static bool IsHanging(LinkEnd end) => end.Height >= Hanging;

    private static Figure<Length> HeightOf(LinkEnd end, Link link) => new(Length.FromMeters(end.Height), link.RestsOn, Reason.Derived.It);

    private static Figure<Length> Nothing => new(Length.Zero, Doubts.None, Reason.Derived.It);
}
