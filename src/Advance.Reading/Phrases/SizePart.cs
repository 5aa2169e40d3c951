using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>One of the lengths of a size.</summary>
/// <param name="Number">As written.</param>
/// <param name="Length">Its length; nothing where it has no unit.</param>
/// <param name="Unit">Its unit; null where it has none.</param>
internal readonly record struct SizePart(double Number, Length Length, Unit? Unit)
{
    /// <summary>The length; without a unit of its own it has that of the next part with one.</summary>
    public Length Among(IEnumerable<SizePart> itselfAndLater) =>
        Unit is null ? UnitsNet.Length.FromMeters(itselfAndLater.First(part => part.Unit is not null).Unit!.InBaseUnits(Number)) : Length;
}
