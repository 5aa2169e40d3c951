namespace Advance.Reading.Shapes;

/// <summary>A shape with keys, as schema and reference see it.</summary>
internal interface IRecord
{
    /// <summary>Its name in schema and reference.</summary>
    string Name { get; }

    /// <summary>What it is.</summary>
    string About { get; }

    /// <summary>Its keys, in the order of their declaration.</summary>
    IReadOnlyList<Field> Fields { get; }

    /// <summary>What holds between them.</summary>
    IReadOnlyList<KeyRule> Rules { get; }
}
