using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// How well friction holds what the wind twists. Wind off the middle pushes one side harder than the other: about the feet of one side, those of the other hold by what they
/// bear, against the push in the middle and the twist. That friction can be shared so is enough for it to hold; it may hold a little more.
/// </summary>
internal static class TwistGrip
{
    private const double Hair = 1e-6;

    /// <summary>What holds over what turns it; unknown where its feet are not in two rows or nobody knows what pushes it.</summary>
    /// <param name="twist">Of the wind.</param>
    /// <param name="base">Its feet.</param>
    /// <param name="whole">All of it.</param>
    /// <param name="kind">What stands on the ground: without feet of a known size it stands on its whole underside.</param>
    public static Figure<double> Of(Figure<Torque> twist, StandingBase @base, StandingBody whole, Kind? kind)
    {
        var faced = whole.Edges.Where(edge => Math.Abs(edge.Y) > 1 - Hair && edge.Sliding?.Value is not null).MinBy(edge => edge.Sliding!.Value!.Value);
        if (faced is null || whole.CentreAcross is not { Value: { } across } centre || @base.Polygon is not { } polygon || !IsInTwoRows(polygon))
        {
            return new Figure<double>(null, twist.RestsOn.With(@base.RestsOn), Reason.Derived.It);
        }

        // Half of an underside that bears all over holds in its own middle.
        var apart = Of(kind?.Standing?.FootArea is null ? @base.Width / 2 : @base.Width, @base.RestsOn);
        var middle = (polygon.Corners.Max(corner => corner.X) + polygon.Corners.Min(corner => corner.X)) / 2;
        var holds = Sum.Of("what one side of its feet holds about the other", "H = 9.80665 · m · h · (B / 2 − g)", RigidBodies.Balance)
            .Put("m", whole.Holds).Put("h", faced.Grip).Put("B", apart).Put("g", Of(Math.Abs(across.Meters - middle), centre.RestsOn.With(@base.RestsOn)))
            .Gives((mass, grip, wide, off) => Torque.FromNewtonMeters(TipAndSlide.Gravity * mass.Kilograms * grip * ((wide.Meters / 2) - off.Meters)));
        var turns = Sum.Of("what turns it about one side of its feet", "D = F · B / 2 + T", RigidBodies.Balance).Put("F", faced.Push!).Put("B", apart).Put("T", twist)
            .Gives((push, wide, torque) => Torque.FromNewtonMeters((push.Newtons * wide.Meters / 2) + torque.NewtonMeters));
        return turns.Value is { NewtonMeters: <= 0 } ? new Figure<double>(null, turns.RestsOn, Reason.Derived.It)
            : Sum.Of("ratio against being turned", "r = H / D", RigidBodies.Balance).Put("H", holds).Put("D", turns).Gives((held, turned) => held.NewtonMeters / turned.NewtonMeters);
    }

    private static bool IsInTwoRows(FeetPolygon polygon)
    {
        var (right, left) = (polygon.Corners.Min(corner => corner.X), polygon.Corners.Max(corner => corner.X));
        return polygon.Corners.All(corner => corner.X - right < Hair || left - corner.X < Hair);
    }

    private static Figure<Length> Of(double metres, Doubts doubts) => new(Length.FromMeters(metres), doubts, Reason.Derived.It);
}
