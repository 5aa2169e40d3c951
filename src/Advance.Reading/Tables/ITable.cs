namespace Advance.Reading.Tables;

/// <summary>A table, as the reference sees it.</summary>
internal interface ITable
{
    /// <summary>The heading over the names of the rows; null where they have none.</summary>
    string? NameKey { get; }
}
