using Advance.Domain.Facts;

namespace Advance.Reading.Yaml;

/// <summary>A value as it stands in a file: a scalar, a list, a map, or something that could not be made out.</summary>
/// <param name="at">The value; for a map without braces its first key, for a list without brackets its first dash.</param>
/// <param name="weight">How many nodes hang here once every alias is followed, this one counted.</param>
internal abstract class Node(Mark at, int weight)
{
    public Mark At { get; } = at;

    public int Weight { get; } = weight;

    /// <summary>What it is, for a sentence that says what was expected instead.</summary>
    public abstract string Kind { get; }
}
