namespace Advance.Domain.Figures;

/// <summary>How sure we are that a publication says so.</summary>
public enum Standing
{
    /// <summary>Read in the publication or a page that quotes it.</summary>
    Read,

    /// <summary>From memory: check the clause before relying on it.</summary>
    FromMemory,

    /// <summary>Common practice, no source.</summary>
    CommonPractice,
}
