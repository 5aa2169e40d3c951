using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Why a piece is in the plan.</summary>
public abstract record Need
{
    private Need()
    {
    }

    /// <summary>Somebody wrote it.</summary>
    /// <param name="At">Where.</param>
    public sealed record AskedFor(Mark At) : Need;

    /// <summary>It always goes with another piece, or joins two.</summary>
    /// <param name="Other">That piece.</param>
    /// <param name="At">Where the stock says so.</param>
    public sealed record GoesWith(Address Other, Mark At) : Need;

    /// <summary>It makes a connection, or a part of one.</summary>
    /// <param name="Link">That connection.</param>
    /// <param name="At">Where somebody wrote what the connection rests on.</param>
    public sealed record Connects(Address Link, Mark At) : Need;
}
