using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out everything that stands: stacks, lighting stands with what hangs on them, and things whose kind says how they stand.</summary>
/// <param name="site">Wind and ground.</param>
/// <param name="gig">For the stage.</param>
/// <param name="policies">Of the company.</param>
/// <param name="stock">For ballast and joints.</param>
internal sealed class StandingBuilder(StandingSite site, Gig gig, Policies policies, Stock stock)
{
    private readonly StandingPolicies standing = policies.Standing;

    /// <summary>A stack; null where it is too low to be judged, or where nobody knows anything of its boxes.</summary>
    public StandingItem? Of(StackPlan stack, IReadOnlyList<Piece> pieces)
    {
        if (stack.Boxes.Count == 0 || stack.Height.AtMost(Figure.Policy("standing / from-height", standing.FromHeight)) == Verdict.Holds)
        {
            return null;
        }

        var working = new PartWorking(standing, stock);
        var lowest = stack.Boxes[0].Piece.Kind;
        var (friction, isAssumed) = site.FrictionUnder(stack.On, StageOf(stack.On), stack.Stack.Friction, standing);
        var @base = new StandingBase(PolygonOf(lowest), stack.On, stack.Turn, friction, isAssumed, SizeDoubts(lowest));
        List<StandingPart> parts = [.. PartsFrom(stack, 0, working), .. working.Of(stack.Stack.Ballast)];
        var address = Address.Of("stack") / stack.Name;
        var body = new BodyWorking(site, standing);
        var whole = body.Of(address / "whole", stack.Name, @base, parts, (stack.Height, stack.Top));
        var interfaces = Enumerable.Range(1, stack.Boxes.Count - 1).Select(upper => Interface(stack, upper, address, body, working)).ToList();
        var weight = WeightOf(pieces.Where(piece => IsPartOf(piece, stack.Address)));
        var twist = TwistOf(stack.Boxes.Select(box => box.Piece), site.GustAt(stack.Top));
        return Finish(new StandingItem(address, Address.Of("stack") / stack.Stack.Name, stack.Name, stack.Stack.Name, stack.Stack.At, stack.On, parts, whole, interfaces)
        {
            Height = stack.Height,
            Twist = twist,
            Turning = twist is null ? null : TwistGrip.Of(twist, @base, whole, lowest),
            Gust = site.GustAt(stack.Top),
            Feet = @base.Polygon?.Corners ?? [],
            Ground = GroundWorking.Of(@base, whole, weight, FeetOf(lowest, @base.Polygon), lowest?.Standing?.FootArea, stack.Stack.Pad, site.IsOpenAir == true),
            Ballasted = stack.Stack.Ballast,
            Assumed = [.. AssumedOf(lowest, isAssumed), .. working.Assumed],
            IsOnCastors = lowest?.Standing?.Foot == FootKind.Castors,
        });
    }

    /// <summary>A lighting stand; null where the position is none, or hangs.</summary>
    public StandingItem? Of(LightingPosition position, IReadOnlyList<FixturePlan> fixtures, IReadOnlyList<Piece> pieces, Footing on)
    {
        if (position.Carrier is not { } carrier || carrier.Kind is not { } kind || (kind.Role != Role.Stand && kind.Standing is null))
        {
            return null;
        }

        var working = new PartWorking(standing, stock);
        var hung = fixtures.Where(fixture => fixture.Position?.Address == position.Address).ToList();
        List<StandingPart> parts =
        [
            working.Of(carrier, Nothing, high: position.Height),
            .. hung.SelectMany(fixture => pieces.Where(piece => IsPartOf(piece, fixture.Address))).Select(piece => piece.Kind?.Role == Role.Fixture ? working.At(piece, position.Height) : Small(piece, position.Height)),
            .. working.Of(position.Position.Ballast),
        ];
        var weight = WeightOf(pieces.Where(piece => IsPartOf(piece, position.Address) || hung.Exists(fixture => IsPartOf(piece, fixture.Address))));
        return Single((position.Address, position.Name, position.Position.Name, position.Position.At), carrier, parts, weight, on, 0, working, (position.Height, position.Trim), position.Position.Ballast);
    }

    /// <summary>A thing; null where its kind does not say how it stands, or where it is too low.</summary>
    public StandingItem? Of(Piece piece, Placed? placed, Mark at)
    {
        if (piece.Kind?.Standing is null || piece.Kind.Joint is not null)
        {
            return null;
        }

        var height = StackFigures.HeightOf(piece.Kind);
        if (height.AtMost(Figure.Policy("standing / from-height", standing.FromHeight)) == Verdict.Holds)
        {
            return null;
        }

        var working = new PartWorking(standing, stock);
        var top = placed is null ? height : StackFigures.Top(placed.Base, height);
        return Single((piece.Address, piece.Name, piece.Name, at), piece, [working.Of(piece, Nothing)], WeightOf([piece]), placed?.On ?? Footing.Unknown, placed?.Turn ?? 0, working, (height, top), []);
    }

    private static readonly Figure<Length> Nothing = new(Length.Zero, Doubts.None, Reason.Derived.It);

    private StandingItem Single(
        (Address Address, string Name, string WrittenName, Mark At) named,
        Piece piece,
        IReadOnlyList<StandingPart> parts,
        Figure<Mass> weight,
        Footing on,
        double turn,
        PartWorking working,
        (Figure<Length> Own, Figure<Length> AboveGround) top,
        IReadOnlyList<BallastRow> ballast)
    {
        var (friction, isAssumed) = site.FrictionUnder(on, StageOf(on), null, standing);
        var @base = new StandingBase(PolygonOf(piece.Kind), on, turn, friction, isAssumed, SizeDoubts(piece.Kind));
        var address = Address.Of("stack") / named.Name;
        var whole = new BodyWorking(site, standing).Of(address / "whole", named.Name, @base, parts, top);
        var twist = TwistOf([piece], site.GustAt(top.AboveGround));
        return Finish(new StandingItem(address, Address.Of("stack") / named.WrittenName, named.Name, named.WrittenName, named.At, on, parts, whole, [])
        {
            Height = top.Own,
            Twist = twist,
            Turning = twist is null ? null : TwistGrip.Of(twist, @base, whole, piece.Kind),
            Gust = site.GustAt(top.AboveGround),
            Feet = @base.Polygon?.Corners ?? [],
            Ground = GroundWorking.Of(@base, whole, weight, FeetOf(piece.Kind, @base.Polygon), piece.Kind?.Standing?.FootArea, null, site.IsOpenAir == true),
            Ballasted = ballast,
            Assumed = [.. AssumedOf(piece.Kind, isAssumed), .. working.Assumed],
            IsOnCastors = piece.Kind?.Standing?.Foot == FootKind.Castors,
        });
    }

    // A quarter of its width off the middle; the boxes of a stack push the same way at the worst.
    private Figure<Torque>? TwistOf(IEnumerable<Piece> pieces, Figure<Speed> gust)
    {
        var sheets = site.IsOpenAir != true ? [] : pieces.Where(piece => piece.Kind is { Standing: { Shape: WindShape.Sheet, FrontArea: not null }, Size: not null }).ToList();
        return sheets.Count == 0 ? null : Sum.Of("what twists its base", "T = 1.25 / 2 · v² · e · Σ fᵢ · bᵢ", En1991.Forces)
            .Put("v", gust)
            .Put("e", new Figure<double>(ForceCoefficients.OffMiddle, Doubts.None, Reason.Derived.It))
            .PutAll("fᵢ", sheets.Select(FoundOf))
            .PutAll("bᵢ", sheets.Select(piece => Figure.From(piece.Kind!.Size!.Value.Select(size => size.Width))))
            .Gives((speed, off, found, wide) => Torque.FromNewtonMeters(WindPressure.Of(speed).Pascals * off * found.Values.Zip(wide.Values).Sum(pair => pair.First.SquareMeters * pair.Second.Meters)));
    }

    private static Figure<UnitsNet.Area> FoundOf(Piece piece) =>
        Sum.Of("what the wind finds of it", "f = c · A", En1991.Forces)
            .Put("c", piece.Kind!.Standing!.ForceCoefficient is { } said ? Figure.From(said) : new Figure<double>(ForceCoefficients.Sheet, Doubts.None, Reason.Derived.It))
            .Put("A", Figure.From(piece.Kind.Standing.FrontArea!.Value))
            .Gives((times, seen) => times * seen);

    private StandingItem Finish(StandingItem item) => site.IsOpenAir == true ? StandingLimits.Of(item, site, standing) : item;

    private StandingBody Interface(StackPlan stack, int upper, Address address, BodyWorking body, PartWorking working)
    {
        var (below, above) = (stack.Boxes[upper - 1], stack.Boxes[upper]);
        var contact = Contact(below.Piece.Kind, above.Piece.Kind);
        var @base = new StandingBase(contact, stack.On, stack.Turn, Figure.Policy("standing / friction", standing.Friction), true, SizeDoubts(below.Piece.Kind).With(SizeDoubts(above.Piece.Kind)));
        var parts = PartsFrom(stack, upper, working).ToList();
        var own = StackFigures.Together("height of the boxes", stack.Boxes.Skip(upper).Select(box => box.Height));
        var made = body.Of(address / "above" / upper, $"{stack.Name} above box {upper}", @base, parts, (own, stack.Top));
        var strap = stack.Stack.Strap is { } strapped ? $"strapped, {strapped.Count} × {strapped.Item}" : "";
        return made with
        {
            Joint = above.Joint is { } joint ? $"{joint.Pieces} × {joint.Kind.Id}" : strap,
            JointStrength = above.Joint?.Kind.Standing?.JointStrength is { } strength ? Figure.From(strength) : null,
        };
    }

    private static IEnumerable<StandingPart> PartsFrom(StackPlan stack, int first, PartWorking working) =>
        stack.Boxes.Skip(first).Select((box, index) => working.Of(
            box.Piece,
            StackFigures.Together("height below", stack.Boxes.Skip(first).Take(index).Select(lower => lower.Height)),
            box.IsUpsideDown,
            box.IsRearFacing));

    // Clamps and bonds weigh, but the wind finds little of them that is not the fixture.
    private StandingPart Small(Piece piece, Figure<Length> height) => new PartWorking(standing, stock).At(piece, height) with { Faces = null };

    private Stage? StageOf(Footing on) => on == Footing.Deck && gig.Stages.Count > 0 ? gig.Stages[0] : null;

    private Figure<Mass> WeightOf(IEnumerable<Piece> pieces) => StackFigures.Weight(pieces, policies.WeightMargin, "weight on the ground");

    private static bool IsPartOf(Piece piece, Address whole) => piece.Address == whole || piece.Address.Text.StartsWith(whole.Text + "/", StringComparison.Ordinal);

    private static IReadOnlyList<(double X, double Y)> FeetOf(Kind? kind, FeetPolygon? polygon) => kind?.Standing is not { } standing ? []
        : standing.Feet.Count > 2 ? [.. standing.Feet.Select(foot => (foot.Across.Meters, foot.Back.Meters))]
        : standing.FootArea is not null ? polygon?.Corners ?? [] : [];

    private static Doubts SizeDoubts(Kind? kind) => kind?.Standing is { Feet.Count: > 2 } ? Doubts.None : Doubts.Of(kind?.Size?.Doubt);

    private static FeetPolygon? PolygonOf(Kind? kind) => kind?.Standing is { Feet.Count: > 2 } standing
        ? FeetPolygon.Of(standing.Feet.Select(foot => (foot.Across.Meters, foot.Back.Meters)))
        : kind?.Size is { IsKnown: true } size ? Rectangle(size.Value.Width, size.Value.Depth) : null;

    private static FeetPolygon? Contact(Kind? below, Kind? above) => below?.Size is { IsKnown: true } lower && above?.Size is { IsKnown: true } upper
        ? Rectangle(UnitMath.Min(lower.Value.Width, upper.Value.Width), UnitMath.Min(lower.Value.Depth, upper.Value.Depth))
        : null;

    private static FeetPolygon? Rectangle(Length width, Length depth)
    {
        var (x, y) = (width.Meters / 2, depth.Meters / 2);
        return x > 0 && y > 0 ? FeetPolygon.Of([(-x, -y), (x, -y), (x, y), (-x, y)]) : null;
    }

    private IEnumerable<string> AssumedOf(Kind? lowest, bool isFrictionAssumed)
    {
        if (lowest?.Standing is not { Feet.Count: > 2 })
        {
            yield return "feet at the corners of its size";
        }

        if (isFrictionAssumed)
        {
            yield return string.Create(System.Globalization.CultureInfo.InvariantCulture, $"friction {standing.Friction:0.##}");
        }
    }
}
