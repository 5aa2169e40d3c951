using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>One of the lengths of a size.</summary>
/// <param name="Number">As written.</param>
/// <param name="Length">Its length; nothing where it has no unit.</param>
/// <param name="Metres">What one of its unit is worth; 0 where it has none.</param>
internal readonly record struct SizePart(double Number, Length Length, double Metres);
