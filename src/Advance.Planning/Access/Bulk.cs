using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Planning;

/// <summary>What something takes up as it travels, in metres.</summary>
/// <param name="Width">Across, as it stands.</param>
/// <param name="Depth">Deep, as it stands.</param>
/// <param name="Height">Up, as it stands.</param>
public readonly record struct Bulk(double Width, double Depth, double Height)
{
    private const double Slack = 1e-9;

    /// <summary>What it takes up, in m³.</summary>
    public double Volume => Width * Depth * Height;

    /// <summary>What it covers as it stands, in m².</summary>
    public double Floor => Width * Depth;

    /// <summary>The longer side as it stands.</summary>
    public double Long => Math.Max(Width, Depth);

    /// <summary>The shorter side as it stands.</summary>
    public double Short => Math.Min(Width, Depth);

    /// <summary>As it stands, and laid on each of its other sides.</summary>
    public IEnumerable<Bulk> Laid => [this, new Bulk(Height, Depth, Width), new Bulk(Width, Height, Depth)];

    /// <summary>From a size; null where it is unknown, or no height was given.</summary>
    public static Bulk? Of(Given<Size>? size) => size is { } given && given.Is(out var known) && known.Height is { } height
        ? new Bulk(known.Width.Meters, known.Depth.Meters, height.Meters)
        : null;

    /// <summary>Whether it goes into a space, laid on any of its sides, square to the walls.</summary>
    public bool GoesInto(Bulk space)
    {
        var (mine, its) = (Sorted(this), Sorted(space));
        return mine.Zip(its).All(pair => pair.First <= pair.Second + Slack);
    }

    private static double[] Sorted(Bulk bulk) => [.. new[] { bulk.Width, bulk.Depth, bulk.Height }.Order()];
}
