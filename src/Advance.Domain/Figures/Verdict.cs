namespace Advance.Domain.Figures;

/// <summary>The three outcomes of a check.</summary>
public enum Verdict
{
    /// <summary>Inside the limit.</summary>
    Holds,

    /// <summary>Outside the limit.</summary>
    Fails,

    /// <summary>Something it needs is unknown; never read as safe.</summary>
    CannotBeJudged,
}
