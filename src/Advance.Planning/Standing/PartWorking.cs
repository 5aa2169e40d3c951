using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Stocks;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Makes parts of what stands: how much of their weight counts, where it acts, what the wind finds.</summary>
/// <param name="policies">Of the company.</param>
/// <param name="stock">For ballast.</param>
internal sealed class PartWorking(StandingPolicies policies, Stock stock)
{
    private static readonly Figure<Length> Nothing = new(Length.Zero, Doubts.None, Reason.Derived.It);

    private readonly List<string> assumed = [];

    /// <summary>What was assumed so far, each once.</summary>
    public IReadOnlyList<string> Assumed => [.. assumed.Distinct(StringComparer.Ordinal)];

    /// <summary>A box or another piece.</summary>
    /// <param name="piece">Which.</param>
    /// <param name="foot">How high its underside is.</param>
    /// <param name="isUpsideDown">Whether it stands on its head.</param>
    /// <param name="isRearFacing">Whether its front is behind.</param>
    /// <param name="high">How high it reaches where that is not in the stock, such as a stand that is wound up; null otherwise.</param>
    public StandingPart Of(Piece piece, Figure<Length> foot, bool isUpsideDown = false, bool isRearFacing = false, Figure<Length>? high = null)
    {
        var kind = piece.Kind;
        var standing = kind?.Standing;
        var height = high ?? StackFigures.HeightOf(kind);
        var centre = standing?.CentreHeight is { } said ? Figure.From(said) : Half(piece, height);
        var up = isUpsideDown && standing?.CentreHeight is not null
            ? Sum.Of("height of a centre of gravity", "z = b + h - c", RigidBodies.Balance).Put("b", foot).Put("h", height).Put("c", centre).Gives((under, own, from) => under + own - from)
            : Sum.Of("height of a centre of gravity", "z = b + c", RigidBodies.Balance).Put("b", foot).Put("c", centre).Gives((under, from) => under + from);
        return new StandingPart(piece.Item, Holds(piece.Item, kind?.Weight), Offset(standing?.CentreAcross, isRearFacing != isUpsideDown), Offset(standing?.CentreBack, isRearFacing), up)
        {
            How = kind?.Weight?.How,
            Faces = FacesOf(piece, foot, height, isRearFacing),
        };
    }

    /// <summary>Something that hangs or lies at a height, such as a fixture on a stand.</summary>
    public StandingPart At(Piece piece, Figure<Length> height) =>
        new(piece.Item, Holds(piece.Item, piece.Kind?.Weight), Nothing, Nothing, height) { How = piece.Kind?.Weight?.How, Faces = FacesAt(piece, height) };

    /// <summary>Ballast that is fixed; what lies loose is none.</summary>
    public IEnumerable<StandingPart> Of(IEnumerable<BallastRow> rows) => rows.Where(row => row.IsFixed).Select(Of);

    private StandingPart Of(BallastRow row)
    {
        var each = row.Weight ?? stock.Find(row.Item)?.Weight;
        var all = Sum.Of("ballast", "w = n · m", Publication.Arithmetic).Put("n", Figure.Count(row.Count)).Put("m", Holds(row.Item, each)).Gives((count, mass) => count * mass);
        return new StandingPart($"{row.Count} × {row.Item}", all, Offset(row.Across, false), Offset(row.Back, false), row.Height is { } high ? Figure.From(high) : Nothing) { How = each?.How };
    }

    private Figure<Mass> Holds(string item, Given<Mass>? weight)
    {
        if (weight is not { } given)
        {
            return new Figure<Mass>(null, Doubts.None, Reason.Derived.It);
        }

        if (given.How == Known.Weighed)
        {
            return Figure.From(given);
        }

        assumed.Add($"{item} not weighed: {policies.CatalogueShare:0.#} % of its weight counted");
        return Sum.Of("weight that holds", "w = m · k / 100", Publication.CommonPractice)
            .Put("m", Figure.From(given)).Put("k", Figure.Policy("standing / catalogue-share", policies.CatalogueShare)).Gives((mass, share) => mass * (share / 100));
    }

    private Figure<Length> Half(Piece piece, Figure<Length> height)
    {
        assumed.Add($"{piece.Item}: centre of gravity at half its height");
        return Sum.Of("half its height", "c = h / 2", Publication.CommonPractice).Put("h", height).Gives(high => high / 2);
    }

    private static Figure<Length> Offset(Given<Length>? offset, bool isTurned) => offset is { } given
        ? isTurned ? Sum.Of("the other way round", "x = -v", Publication.Arithmetic).Put("v", Figure.From(given)).Gives(value => -value) : Figure.From(given)
        : Nothing;

    private WindFaces FacesOf(Piece piece, Figure<Length> foot, Figure<Length> height, bool isRearFacing)
    {
        var middle = Sum.Of("middle of what the wind finds", "z = b + h / 2", RigidBodies.Balance).Put("b", foot).Put("h", height).Gives((under, high) => under + (high / 2));
        var faces = FacesAt(piece, middle);
        return isRearFacing ? faces with { Front = faces.Rear, Rear = faces.Front } : faces;
    }

    private WindFaces FacesAt(Piece piece, Figure<Length> middle)
    {
        var standing = piece.Kind?.Standing;
        var coefficient = standing?.ForceCoefficient is { } said ? Figure.From(said) : new Figure<double>(ForceCoefficients.Of(standing?.Shape ?? WindShape.Box), Doubts.None, Reason.Derived.It);
        var source = standing?.ForceCoefficient is not null
            ? standing.ForceCoefficientFrom.Length > 0 ? standing.ForceCoefficientFrom : "stock"
            : standing?.Shape == WindShape.Lattice ? Publication.CommonPractice.ToString() : standing?.Shape == WindShape.Wall ? En1991.FreeWalls.ToString() : En1991.Forces.ToString();
        var front = AreaOf(piece, standing?.FrontArea, size => size.Width);
        var side = AreaOf(piece, standing?.SideArea, size => size.Depth);
        var rear = standing?.RearArea is { } behind ? Figure.From(behind) : front;
        return new WindFaces(Found(coefficient, front), Found(coefficient, side), Found(coefficient, rear), middle, coefficient, source);
    }

    // Only a box is as wide to the wind as its size: a stand's legs are not.
    private Figure<UnitsNet.Area> AreaOf(Piece piece, Given<UnitsNet.Area>? said, Func<Domain.Places.Size, Length> wide)
    {
        if (said is { } given)
        {
            return Figure.From(given);
        }

        var kind = piece.Kind;
        var isBox = kind is { Loudspeaker: not null } or { Role: Role.Fixture or Role.Loudspeaker or Role.Case };
        if (!isBox || kind!.Size is not { } size)
        {
            var doubt = kind is null ? null : new Doubt($"{kind.Id} / standing / front-area", kind.At, LeftOut: true);
            return new Figure<UnitsNet.Area>(null, Doubts.Of(doubt), Reason.Derived.It);
        }

        assumed.Add($"{piece.Item}: areas from its size");
        return Sum.Of("area to the wind", "A = w · h", Publication.Arithmetic)
            .Put("w", Figure.From(size.Select(wide))).Put("h", StackFigures.HeightOf(kind))
            .Gives((across, high) => UnitsNet.Area.FromSquareMeters(across.Meters * high.Meters));
    }

    private static Figure<UnitsNet.Area> Found(Figure<double> coefficient, Figure<UnitsNet.Area> area) =>
        Sum.Of("what the wind finds of it", "f = c · A", En1991.Forces).Put("c", coefficient).Put("A", area).Gives((times, seen) => times * seen);
}
