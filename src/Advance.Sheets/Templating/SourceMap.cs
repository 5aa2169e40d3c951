using Advance.Domain.Facts;

namespace Advance.Sheets.Templating;

/// <summary>Leads from a place in what was written back to the template that wrote it.</summary>
public sealed class SourceMap
{
    private readonly IReadOnlyList<Piece> pieces;

    internal SourceMap(IReadOnlyList<Piece> pieces) => this.pieces = pieces;

    /// <summary>The place in a template that wrote the character at an offset; inside a printed value, the expression that printed it.</summary>
    /// <param name="offset">In UTF-16 units from the start of the output; a place outside it is taken as the nearest end.</param>
    public Mark At(int offset)
    {
        var (frame, place) = Find(offset);
        return frame.Source.At(place);
    }

    internal (Frame Frame, int Offset) Find(int offset)
    {
        int low = 0, high = pieces.Count - 1;
        while (low < high)
        {
            var middle = (low + high + 1) / 2;
            (low, high) = pieces[middle].Start <= offset ? (middle, high) : (low, middle - 1);
        }

        var piece = pieces[low];
        return (piece.Frame, piece.IsCopied ? piece.Offset + Math.Max(0, offset - piece.Start) : piece.Offset);
    }
}
