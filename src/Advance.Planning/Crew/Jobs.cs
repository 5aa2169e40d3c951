using Advance.Domain.Figures;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>Tells what a piece is there for: that of the piece that brings it along.</summary>
internal static class Jobs
{
    /// <summary>By id of the kind, the job of each piece of it that comes first of all.</summary>
    public static IReadOnlyDictionary<string, Job> ByItem(IReadOnlyList<Piece> pieces)
    {
        var byAddress = pieces.DistinctBy(piece => piece.Address).ToDictionary(piece => piece.Address);
        return pieces.GroupBy(piece => piece.Item, StringComparer.Ordinal)
            .ToDictionary(group => group.Key, group => group.Min(piece => Of(piece, byAddress)), StringComparer.Ordinal);
    }

    private static Job Of(Piece piece, Dictionary<Address, Piece> all)
    {
        // A cable goes with what it connects, whoever brought it; anything else with what brought it.
        var root = piece.Kind?.Role == Role.Cable ? piece : Root(piece, all);
        return root.Kind is { Role: Role.Cable, Cable: { } cable } ? OfCable(cable, root, all) : OfDepartment(root.Department, root.Kind);
    }

    private static Piece Root(Piece piece, Dictionary<Address, Piece> all)
    {
        while (piece.Why is Need.GoesWith with && all.TryGetValue(with.Other, out var other))
        {
            piece = other;
        }

        return piece;
    }

    private static Job OfCable(Cable cable, Piece piece, Dictionary<Address, Piece> all) => cable.Carries switch
    {
        "mains" when piece.Why is Need.GoesWith => OfDepartment(Root(piece, all).Department, Root(piece, all).Kind),
        "mains" => Job.Mains,
        "speaker" => Job.Stacks,
        "lighting-control" => Job.Lights,
        "network" => Job.Desks,
        _ => Job.Inputs,
    };

    private static Job OfDepartment(string department, Kind? kind) => department switch
    {
        "transport" => Job.Unload,
        "rigging" => Job.Rigging,
        "stage" => Job.Deck,
        "power" => Job.Mains,
        "lighting" or "lights" => Job.Lights,
        "sound" when kind?.Role == Role.Loudspeaker => Job.Stacks,
        "sound" when kind?.Role == Role.Console => Job.Desks,
        "sound" or "patch" => Job.Inputs,
        "extras" when kind is not null && kind.Department != department => OfDepartment(kind.Department, kind),
        _ => Job.None,
    };
}
