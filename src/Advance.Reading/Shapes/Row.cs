using Advance.Domain.Facts;

namespace Advance.Reading.Shapes;

/// <summary>The values of a record while it is made.</summary>
/// <param name="name">Its key in the map that holds it; empty where it has none.</param>
/// <param name="at">Where its name stands, or where it starts.</param>
/// <param name="values">One for each key, in the order of their declaration.</param>
internal sealed class Row(string name, Mark at, object?[] values)
{
    /// <summary>Its key in the map that holds it; empty where it has none.</summary>
    public string Name { get; } = name;

    /// <summary>Where its name stands, or where it starts.</summary>
    public Mark At { get; } = at;

    /// <summary>The value of a key.</summary>
    public object? this[int index] => values[index];
}
