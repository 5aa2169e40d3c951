using Advance.Domain.Facts;
using Advance.Domain.Places;
using Advance.Domain.Stocks;

namespace Advance.Planning;

/// <summary>What a thing covers on the floor, in metres.</summary>
/// <param name="Width">Across the stage, before it is turned.</param>
/// <param name="Depth">Up and down the stage, before it is turned.</param>
public readonly record struct Footprint(double Width, double Depth)
{
    /// <summary>For drawing a thing whose size nobody gave.</summary>
    public static readonly Footprint Usual = new(0.5, 0.5) { IsGuess = true };

    /// <summary>Whether nobody gave a size, so that nothing may be judged by it.</summary>
    public bool IsGuess { get; init; }

    /// <summary>From the size that was given, else that of the kind, else the usual one.</summary>
    public static Footprint Of(Kind? kind, Given<Size>? own = null) =>
        (own ?? kind?.Size) is { } given && given.Is(out var size) ? new(size.Width.Meters, size.Depth.Meters) : Usual;
}
