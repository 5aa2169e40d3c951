using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Wording;

namespace Advance.Domain.Findings;

/// <summary>Something a rule has to say.</summary>
/// <param name="Rule">The rule's name, such as <c>stock/too-few</c>.</param>
/// <param name="Severity">How much it weighs.</param>
/// <param name="At">The place in a file that has to do with it.</param>
/// <param name="Says">First line, which stands alone: measured against allowed.</param>
/// <param name="Cure">What would put it right.</param>
public sealed record Finding(string Rule, Severity Severity, Mark At, Words Says, Words Cure)
{
    /// <summary>What it is about; the default for a fault in the text itself.</summary>
    public Address Where { get; init; }

    /// <summary>Why it matters; null where the first line says it all.</summary>
    public Words? Why { get; init; }

    /// <summary>The figures it rests on, as an <c>accept</c> row must hold them; null where it cannot be accepted.</summary>
    public Words? Figures { get; init; }

    /// <summary>Who accepted it, at these figures.</summary>
    public Acceptance? Accepted { get; init; }

    /// <summary>Whether a check could not be made because something is unknown.</summary>
    public bool CannotBeJudged { get; init; }

    /// <summary>The open questions behind it.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;

    /// <summary>Whether it keeps the package from being issued.</summary>
    public bool Stops => Severity >= Severity.Stop && Accepted is null;
}
