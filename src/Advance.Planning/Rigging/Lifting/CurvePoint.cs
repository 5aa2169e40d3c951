namespace Advance.Planning;

/// <summary>Between which values shear and moment lie at a place, over some cases: for a picture.</summary>
/// <param name="At">m from the truss's left end.</param>
/// <param name="LeastShear">N.</param>
/// <param name="MostShear">N.</param>
/// <param name="LeastMoment">N m, hogging negative.</param>
/// <param name="MostMoment">N m, sagging positive.</param>
public sealed record CurvePoint(double At, double LeastShear, double MostShear, double LeastMoment, double MostMoment);
