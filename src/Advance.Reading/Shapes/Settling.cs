using Advance.Domain.Facts;
using Advance.Reading.Phrases;
using Advance.Reading.Yaml;

namespace Advance.Reading.Shapes;

/// <summary>Takes <c>TBC</c> off what was written.</summary>
internal static class Settling
{
    /// <summary>Parts a value from the open question about it.</summary>
    /// <param name="node">As written.</param>
    /// <param name="reader">Keeps the question.</param>
    /// <param name="rest">The value without the question; null for TBC alone.</param>
    /// <param name="doubt">The question; null where there is none.</param>
    /// <returns>False where the question itself has a fault.</returns>
    public static bool TrySettle(Node node, Reader reader, out Node? rest, out Doubt? doubt)
    {
        (rest, doubt) = (node, null);
        if (node is not ScalarNode scalar || node is BlockNode || Tail.Find(scalar.Text, out var fault) is not { } tail)
        {
            return true;
        }

        if (fault is not null)
        {
            return reader.Fault(ShapeFindings.Phrase(scalar, fault));
        }

        doubt = reader.Ask(tail, scalar);
        rest = tail.Body == 0 ? null : scalar.Cut(0, tail.Body);
        return true;
    }

    /// <summary>Whether nothing but an open question was written.</summary>
    public static bool IsTbcAlone(Node node) => node is ScalarNode scalar and not BlockNode && Tail.Find(scalar.Text, out _) is { Body: 0 };
}
