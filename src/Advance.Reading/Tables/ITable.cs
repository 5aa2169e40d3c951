using Advance.Reading.Shapes;

namespace Advance.Reading.Tables;

/// <summary>A table, as the reference sees it.</summary>
internal interface ITable
{
    /// <summary>What a row may hold.</summary>
    IRecord Row { get; }

    /// <summary>The heading over the names of the rows; null where they have none.</summary>
    string? NameKey { get; }
}
