using Advance.Domain.Facts;

namespace Advance.Sheets.Templating;

/// <summary>One use of a template: the sheet itself, or a partial together with the places that included it.</summary>
/// <param name="Source">The template.</param>
/// <param name="From">Who included it; null for the sheet itself.</param>
/// <param name="FromOffset">Where in <paramref name="From"/>.</param>
internal sealed record Frame(SourceText Source, Frame? From = null, int FromOffset = 0)
{
    /// <summary>The places that included it, innermost first.</summary>
    public IReadOnlyList<Mark> IncludedAt()
    {
        var places = new List<Mark>();
        for (var frame = this; frame.From is { } from; frame = from)
        {
            places.Add(from.Source.At(frame.FromOffset));
        }

        return places;
    }
}
