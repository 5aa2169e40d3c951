using System.Globalization;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out each edge of a body that stands.</summary>
/// <param name="site">Wind and ground.</param>
/// <param name="policies">Of the company.</param>
internal sealed class BodyWorking(StandingSite site, StandingPolicies policies)
{
    // Plans whose sides are nearer to each other than this are near square: the wind onto a corner counts for them.
    private const double NearSquare = 0.7;

    // Ways of the wind that go more or less over an edge.
    private const double OverEdge = 0.7;

    private static readonly Figure<UnitsNet.Area> NoArea = new(UnitsNet.Area.Zero, Doubts.None, Reason.Derived.It);

    private Figure<double> Ratio => Figure.Policy("standing / ratio", policies.Ratio);

    /// <summary>The body.</summary>
    /// <param name="address">Its name in the plan.</param>
    /// <param name="name">Its name on paper.</param>
    /// <param name="base">What it stands on.</param>
    /// <param name="parts">What stands there as one.</param>
    /// <param name="top">Its own top above its base, for a push, and above the ground, for the wind.</param>
    public StandingBody Of(Address address, string name, StandingBase @base, IReadOnlyList<StandingPart> parts, (Figure<Length> Own, Figure<Length> AboveGround) top)
    {
        var holds = Together(parts);
        var centre = (X: Mean("centre of gravity, across", "x", parts, part => part.Across), Y: Mean("centre of gravity, back", "y", parts, part => part.Back));
        var height = Mean("height of a centre of gravity", "z", parts, part => part.Up);
        var edges = @base.Polygon is { } polygon ? polygon.Edges.Select(edge => EdgeOf(edge, @base, centre, height)).ToList() : [];
        var loaded = site.IsOpenAir == true
            ? edges.Select(edge => InWind(edge, @base, parts, holds, site.GustAt(top.AboveGround)))
            : edges.Select(edge => Pushed(edge, holds, top.Own));
        return new StandingBody(address, name, holds, height, [.. Named([.. loaded])]) { Friction = @base.Friction, IsFrictionAssumed = @base.IsFrictionAssumed, CentreAcross = centre.X, CentreBack = centre.Y };
    }

    private static Figure<Mass> Together(IReadOnlyList<StandingPart> parts) =>
        Sum.Of("weight that holds", "W = Σ wᵢ", Publication.Arithmetic)
            .PutAll("wᵢ", parts.Select(part => part.Holds))
            .Gives(terms => Mass.FromKilograms(terms.Values.Sum(mass => mass.Kilograms)));

    private static Figure<Length> Mean(string name, string symbol, IReadOnlyList<StandingPart> parts, Func<StandingPart, Figure<Length>> of) =>
        Sum.Of(name, $"{symbol} = Σ wᵢ · {symbol}ᵢ / Σ wᵢ, or 0 where Σ wᵢ = 0", RigidBodies.Balance)
            .PutAll("wᵢ", parts.Select(part => part.Holds))
            .PutAll($"{symbol}ᵢ", parts.Select(of))
            .Gives(Weighted);

    private static Length Weighted(Terms<Mass> masses, Terms<Length> lengths)
    {
        var all = masses.Values.Sum(mass => mass.Kilograms);
        return all == 0 ? Length.Zero : Length.FromMeters(masses.Values.Zip(lengths.Values).Sum(pair => pair.First.Kilograms * pair.Second.Meters) / all);
    }

    private StandingEdge EdgeOf(
        (double X, double Y, double Offset) edge, StandingBase @base, (Figure<Length> X, Figure<Length> Y) centre, Figure<Length> height)
    {
        var inside = Sum.Of("centre of gravity inside an edge", "d = o - Σ nᵢ · gᵢ", RigidBodies.Balance)
            .Put("o", new Figure<Length>(Length.FromMeters(edge.Offset), @base.RestsOn, Reason.Derived.It))
            .PutAll("nᵢ", [Plain(edge.X), Plain(edge.Y)])
            .PutAll("gᵢ", [centre.X, centre.Y])
            .Gives((offset, ways, at) => offset - Length.FromMeters(ways.Values.Zip(at.Values).Sum(pair => pair.First * pair.Second.Meters)));
        var angle = Sum.Of("angle at which it tips", "θ = atan(d / z)", RigidBodies.Balance).Put("d", inside).Put("z", height).Gives(InDegrees);
        var (x, y) = Turned(edge.X, edge.Y, @base.Turn);
        var slope = site.SlopeTowards(@base.On, x, y);
        var arm = Sum.Of("arm of its weight", "a = d · cos(s) - z · sin(s)", RigidBodies.Balance)
            .Put("d", inside).Put("z", height).Put("s", slope).Gives(TipAndSlide.Arm);
        var grip = Sum.Of("grip on the ground", "h = μ · cos(s) - sin(s)", RigidBodies.Balance)
            .Put("μ", @base.Friction).Put("s", slope).Gives(TipAndSlide.Grip);
        return new StandingEdge("", edge.X, edge.Y, inside, angle, slope, arm, grip);
    }

    private StandingEdge InWind(StandingEdge edge, StandingBase @base, IReadOnlyList<StandingPart> parts, Figure<Mass> holds, Figure<Speed> gust)
    {
        var faced = parts.Where(part => part.Faces is not null).Select(part => part.Faces!).ToList();
        if (faced.Count == 0)
        {
            return edge;
        }

        var ways = WaysOnto(@base, edge).ToList();
        var tips = ways.Select(way => (Way: way, Seen: Lever(faced, way, edge))).MaxBy(found => found.Seen.Value?.CubicMeters ?? double.MaxValue);
        var pushes = ways.Where(way => way.Along(edge.X, edge.Y) > OverEdge - 0.01).Select(way => Seen(faced, way)).DefaultIfEmpty(NoArea).MaxBy(seen => seen.Value?.SquareMeters ?? double.MaxValue)!;
        var pressure = GustPressure.Of(gust);
        var moment = Sum.Of("what tips it", "M = q · S", RigidBodies.Balance).Put("q", pressure).Put("S", tips.Seen)
            .Gives((press, seen) => Torque.FromNewtonMeters(press.Pascals * seen.CubicMeters));
        var push = Sum.Of("what pushes it", "F = q · A", RigidBodies.Balance).Put("q", pressure).Put("A", pushes).Gives(WindPressure.On);
        return Loaded(edge, @base, holds, moment, push) with
        {
            From = tips.Way.Name,
            TippingGust = tips.Seen.Value is { CubicMeters: <= 0 } ? null : Sum
                .Of("gust at which it tips", "v = √(max(0, 2 · 9.80665 · m · a) / (1.25 · γ · S))", RigidBodies.Balance)
                .Put("m", holds).Put("a", edge.Arm).Put("γ", Ratio).Put("S", tips.Seen).Gives(TipAndSlide.TippingGust),
            SlidingGust = pushes.Value is { SquareMeters: <= 0 } ? null : Sum
                .Of("gust at which it slides", "v = √(max(0, 2 · 9.80665 · m · h) / (1.25 · γ · A))", RigidBodies.Balance)
                .Put("m", holds).Put("h", edge.Grip).Put("γ", Ratio).Put("A", pushes).Gives(TipAndSlide.SlidingGust),
        };
    }

    private StandingEdge Pushed(StandingEdge edge, Figure<Mass> holds, Figure<Length> top)
    {
        var push = Sum.Of("push of people", "P = min(k / 100 · 9.80665 · m, f)", Publication.CommonPractice)
            .Put("k", Figure.Policy("standing / push", policies.Push)).Put("m", holds).Put("f", Figure.Policy("standing / push-most", policies.PushMost))
            .Gives((share, mass, most) => Force.FromNewtons(Math.Min(share / 100 * TipAndSlide.Gravity * mass.Kilograms, most.Newtons)));
        var high = Sum.Of("height of the push", "z = min(T, t)", Publication.CommonPractice)
            .Put("T", top).Put("t", Figure.Policy("standing / push-height", policies.PushHeight))
            .Gives((own, most) => Length.FromMeters(Math.Min(own.Meters, most.Meters)));
        var moment = Sum.Of("what tips it", "M = P · z", RigidBodies.Balance).Put("P", push).Put("z", high).Gives((force, arm) => Torque.FromNewtonMeters(force.Newtons * arm.Meters));
        return WithRatios(edge, holds, moment, push);
    }

    private StandingEdge Loaded(StandingEdge edge, StandingBase @base, Figure<Mass> holds, Figure<Torque> moment, Figure<Force> push)
    {
        var held = Sum.Of("what holds it", "R = 9.80665 · m · a", RigidBodies.Balance).Put("m", holds).Put("a", edge.Arm)
            .Gives((mass, arm) => Torque.FromNewtonMeters(TipAndSlide.Gravity * mass.Kilograms * arm.Meters));
        var offset = @base.Polygon!.Edges.First(known => known.X == edge.X && known.Y == edge.Y).Offset;
        var arm = Sum.Of("arm of ballast in the middle", "b = o · cos(s)", RigidBodies.Balance)
            .Put("o", new Figure<Length>(Length.FromMeters(offset), @base.RestsOn, Reason.Derived.It)).Put("s", edge.Slope)
            .Gives((out_, slope) => Length.FromMeters(out_.Meters * Math.Cos(slope.Radians)));
        return WithRatios(edge, holds, moment, push) with
        {
            AgainstTipping = offset <= 0 ? null : Sum
                .Of("ballast against tipping", "B = max(0, γ · M - R) / (9.80665 · b)", RigidBodies.Balance)
                .Put("γ", Ratio).Put("M", moment).Put("R", held).Put("b", arm).Gives(Ballasting.AgainstTipping),
            AgainstSliding = edge.Grip.Value is <= 0 ? null : Sum
                .Of("ballast against sliding", "B = max(0, γ · F / (9.80665 · h) - m)", RigidBodies.Balance)
                .Put("γ", Ratio).Put("F", push).Put("h", edge.Grip).Put("m", holds).Gives(Ballasting.AgainstSliding),
            ForJoint = Sum.Of("moment that a joint must hold", "J = max(0, γ · M - R)", RigidBodies.Balance)
                .Put("γ", Ratio).Put("M", moment).Put("R", held)
                .Gives((ratio, tips, holding) => Torque.FromNewtonMeters(Math.Max(0, (ratio * tips.NewtonMeters) - holding.NewtonMeters))),
        };
    }

    private static StandingEdge WithRatios(StandingEdge edge, Figure<Mass> holds, Figure<Torque> moment, Figure<Force> push) => edge with
    {
        Moment = moment,
        Push = push,
        Tipping = moment.Value is { NewtonMeters: <= 0 } ? null : Sum
            .Of("ratio against tipping", "r = 9.80665 · m · a / M", RigidBodies.Balance).Put("m", holds).Put("a", edge.Arm).Put("M", moment).Gives(TipAndSlide.Tipping),
        Sliding = push.Value is { Newtons: <= 0 } ? null : Sum
            .Of("ratio against sliding", "r = 9.80665 · m · h / F", RigidBodies.Balance).Put("m", holds).Put("h", edge.Grip).Put("F", push).Gives(TipAndSlide.Sliding),
    };

    private static Figure<Volume> Lever(IReadOnlyList<WindFaces> faces, WindWay way, StandingEdge edge) =>
        Sum.Of("what the wind finds, times its height", "S = n · Σ fᵢ · zᵢ", RigidBodies.Balance)
            .Put("n", Plain(way.Along(edge.X, edge.Y)))
            .PutAll("fᵢ", faces.Select(face => Found(face, way)))
            .PutAll("zᵢ", faces.Select(face => face.Middle))
            .Gives((share, seen, high) => Volume.FromCubicMeters(share * seen.Values.Zip(high.Values).Sum(pair => pair.First.SquareMeters * pair.Second.Meters)));

    private static Figure<UnitsNet.Area> Seen(IReadOnlyList<WindFaces> faces, WindWay way) =>
        Sum.Of("what the wind finds", "A = Σ fᵢ", Publication.Arithmetic)
            .PutAll("fᵢ", faces.Select(face => Found(face, way)))
            .Gives(seen => UnitsNet.Area.FromSquareMeters(seen.Values.Sum(area => area.SquareMeters)));

    private static Figure<UnitsNet.Area> Found(WindFaces face, WindWay way)
    {
        var front = way.Y > 0 ? face.Front : face.Rear;
        return way.IsDiagonal
            ? Sum.Of("what the wind finds over a corner", "f = (a + b) / √2", RigidBodies.Balance).Put("a", front).Put("b", face.Side).Gives((a, b) => (a + b) / Math.Sqrt(2))
            : way.X == 0 ? front : face.Side;
    }

    private static IEnumerable<WindWay> WaysOnto(StandingBase @base, StandingEdge edge) =>
        WindWay.Straight.Concat(@base.Squareness >= NearSquare ? WindWay.Diagonal : []).Where(way => way.Along(edge.X, edge.Y) > 0.01);

    // A turned box takes its own axes along: clockwise as drawn with the audience at the foot.
    private static (double X, double Y) Turned(double x, double y, double degrees)
    {
        var (sin, cos) = Math.SinCos(degrees * Math.PI / 180);
        return ((x * cos) + (y * sin), (y * cos) - (x * sin));
    }

    private static Angle InDegrees(Length inside, Length height) => TipAndSlide.TipAngle(inside, height);

    private static Figure<double> Plain(double value) => new(value, Doubts.None, Reason.Derived.It);

    private static IEnumerable<StandingEdge> Named(IReadOnlyList<StandingEdge> edges)
    {
        var count = new Dictionary<string, int>(StringComparer.Ordinal);
        foreach (var edge in edges)
        {
            var name = NameOf(edge.X, edge.Y);
            count[name] = count.GetValueOrDefault(name) + 1;
            yield return edge with { Name = count[name] == 1 ? name : string.Create(CultureInfo.InvariantCulture, $"{name} {count[name]}") };
        }
    }

    private static string NameOf(double x, double y)
    {
        var depth = y > 0.38 ? "rear" : y < -0.38 ? "front" : "";
        var side = x > 0.38 ? "SL" : x < -0.38 ? "SR" : "";
        return depth.Length > 0 && side.Length > 0 ? $"{depth} {side} edge" : $"{depth}{side} edge";
    }
}
