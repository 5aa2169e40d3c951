using Advance.Domain.Facts;

namespace Advance.Reading.Shapes;

/// <summary>The values of a record while it is made.</summary>
/// <param name="name">Its key in the map that holds it; empty where it has none.</param>
/// <param name="at">Where its name stands, or where it starts.</param>
/// <param name="subject">The path of keys that leads to it.</param>
/// <param name="values">One for each key, in the order of their declaration.</param>
internal sealed class Row(string name, Mark at, string subject, object?[] values)
{
    /// <summary>Its key in the map that holds it; empty where it has none.</summary>
    public string Name { get; } = name;

    /// <summary>Where its name stands, or where it starts.</summary>
    public Mark At { get; } = at;

    /// <summary>The path of keys that leads to it: <c>sound / stacks / Main</c>.</summary>
    public string Subject { get; } = subject;

    /// <summary>The value of a key.</summary>
    public object? this[int index] => values[index];
}
