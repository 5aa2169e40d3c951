namespace Advance.Domain.Figures;

/// <summary>A list of values of whatever kind, for those who only print them.</summary>
public interface ITerms
{
    /// <summary>The values, in the order they were put in.</summary>
    IEnumerable<object> Objects { get; }
}
