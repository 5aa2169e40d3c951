using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;

namespace Advance.Planning;

/// <summary>The feet that something stands on, and what they stand on.</summary>
/// <param name="Polygon">Around the feet; null where nobody knows where they are.</param>
/// <param name="On">Deck or floor.</param>
/// <param name="Turn">Of what stands there, degrees clockwise.</param>
/// <param name="Friction">Under the feet, wet.</param>
/// <param name="IsFrictionAssumed">Whether that is only the company's figure.</param>
/// <param name="RestsOn">The open questions about the feet.</param>
internal sealed record StandingBase(FeetPolygon? Polygon, Footing On, double Turn, Figure<double> Friction, bool IsFrictionAssumed, Doubts RestsOn)
{
    /// <summary>Across the feet, m; 0 where nobody knows.</summary>
    public double Width => Polygon is null ? 0 : Polygon.Corners.Max(corner => corner.X) - Polygon.Corners.Min(corner => corner.X);

    /// <summary>From the front feet to the rear ones, m; 0 where nobody knows.</summary>
    public double Depth => Polygon is null ? 0 : Polygon.Corners.Max(corner => corner.Y) - Polygon.Corners.Min(corner => corner.Y);

    /// <summary>1 for a square, less the longer it is.</summary>
    public double Squareness => Math.Max(Width, Depth) is > 0 and var longer ? Math.Min(Width, Depth) / longer : 0;
}
