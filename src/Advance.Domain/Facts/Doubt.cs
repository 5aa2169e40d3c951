namespace Advance.Domain.Facts;

/// <summary>Something still to be confirmed, or left out: a question that somebody must answer.</summary>
/// <param name="Subject">What it is about, as the path of keys that leads to it: <c>services / A / residual-protection</c>.</param>
/// <param name="At">Where it was written, or, when left out, the thing that lacks it. Two doubts at one mark about one subject are one.</param>
/// <param name="Who">Who must answer; null where nobody was named.</param>
/// <param name="By">When the answer is needed; null where no date was given.</param>
/// <param name="Written">The value that stands there for the time being; null where there is none.</param>
/// <param name="LeftOut">True where nothing was written at all, neither a value nor TBC.</param>
public sealed record Doubt(string Subject, Mark At, string? Who = null, WrittenDate? By = null, string? Written = null, bool LeftOut = false)
    : IComparable<Doubt>
{
    /// <summary>Orders by mark, then subject.</summary>
    public int CompareTo(Doubt? other)
    {
        if (other is null)
        {
            return 1;
        }

        var byMark = At.CompareTo(other.At);
        return byMark != 0 ? byMark : string.CompareOrdinal(Subject, other.Subject);
    }
}
