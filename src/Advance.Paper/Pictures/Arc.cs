namespace Advance.Paper.Pictures;

/// <summary>A part of a circle.</summary>
/// <param name="Middle">The middle of the circle.</param>
/// <param name="Radius">In mm.</param>
/// <param name="Start">Where it begins, in degrees clockwise from the right.</param>
/// <param name="Sweep">How far it goes, in degrees clockwise.</param>
/// <param name="Wedge">True to draw both radii, too.</param>
public sealed record Arc(Point Middle, double Radius, double Start, double Sweep, bool Wedge = false) : Shape;
