using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The gust that something stands, by its worst edge, mode and loose interface, and what follows from it.</summary>
internal static class StandingLimits
{
    /// <summary>The item with its limit, its action levels and the ballast that it lacks.</summary>
    public static StandingItem Of(StandingItem item, StandingSite site, StandingPolicies policies)
    {
        var modes = Modes(item).Concat(Turns(item, policies)).ToList();
        var least = modes.Where(mode => mode.Gust.Value is not null).MinBy(mode => mode.Gust.Value!.Value.MetersPerSecond);
        if (modes.Count == 0)
        {
            return item;
        }

        var limit = Sum.Of("gust that it stands", "v = min vᵢ", RigidBodies.Balance)
            .PutAll("vᵢ", modes.Select(mode => mode.Gust))
            .Gives(terms => Speed.FromMetersPerSecond(terms.Values.Min(speed => speed.MetersPerSecond)));
        return item with
        {
            Limit = limit,
            LimitFrom = least.Words ?? "",
            IsLimitByAssumedFriction = least is { IsSlide: true, Body.IsFrictionAssumed: true } && ReferenceEquals(least.Body, item.Whole),
            Prepare = Action("gust to make ready at", "standing / prepare", policies.Prepare, limit),
            Act = Action("gust to act at", "standing / act", policies.Act, limit),
            Forecast = site.Forecast(limit, item.Height),
            Ballast = BallastOf(item.Whole),
        };
    }

    private static IEnumerable<(StandingBody Body, Figure<Speed> Gust, string Words, bool IsSlide)> Modes(StandingItem item)
    {
        foreach (var body in item.Loose)
        {
            var of = ReferenceEquals(body, item.Whole) ? "" : $", {body.Name[(item.Name.Length + 1)..]}";
            foreach (var edge in body.Edges)
            {
                if (edge.TippingGust is { } tips)
                {
                    yield return (body, tips, $"tips over its {edge.Name}{of}", false);
                }

                if (edge.SlidingGust is { } slides)
                {
                    yield return (body, slides, $"slides {edge.Towards}{of}", true);
                }
            }
        }
    }

    // Push and twist both go with the square of the gust.
    private static IEnumerable<(StandingBody Body, Figure<Speed> Gust, string Words, bool IsSlide)> Turns(StandingItem item, StandingPolicies policies) =>
        item.Turning is { Value: not null } turning
            ? [(item.Whole, Sum.Of("gust at which it turns on its feet", "v = V · √(max(0, r) / γ)", RigidBodies.Balance)
                .Put("V", item.Gust).Put("r", turning).Put("γ", Figure.Policy("standing / ratio", policies.Ratio))
                .Gives((stated, held, ratio) => stated * Math.Sqrt(Math.Max(0, held) / ratio)), "turns on its feet", true)]
            : [];

    internal static Figure<Speed> Action(string name, string policy, double share, Figure<Speed> limit) =>
        Sum.Of(name, "v = s / 100 · V", Publication.CommonPractice).Put("s", Figure.Policy(policy, share)).Put("V", limit).Gives((part, speed) => part / 100 * speed);

    // Where friction alone cannot be helped by weight there is no answer in kilograms.
    private static Figure<Mass>? BallastOf(StandingBody whole)
    {
        var all = whole.Edges.SelectMany(edge => new[] { edge.AgainstTipping, edge.AgainstSliding }).OfType<Figure<Mass>>().ToList();
        return all.Count == 0 || whole.Edges.Any(edge => edge.Grip.Value is <= 0) ? null : Sum.Of("ballast missing", "B = max Bᵢ", RigidBodies.Balance)
            .PutAll("Bᵢ", all)
            .Gives(terms => Mass.FromKilograms(terms.Values.Max(mass => mass.Kilograms)));
    }
}
