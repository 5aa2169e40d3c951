using Advance.Domain.Facts;

namespace Advance.Reading.Shapes;

/// <summary>A value and where it was written.</summary>
internal readonly record struct Marked<T>(T Value, Mark At);
