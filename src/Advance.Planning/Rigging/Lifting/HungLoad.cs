namespace Advance.Planning;

/// <summary>Something that hangs at one place of a truss.</summary>
/// <param name="At">m from its left end.</param>
/// <param name="Force">N, 0 or more.</param>
/// <param name="Across">How far it hangs off the centre line, m, to the audience positive.</param>
public sealed record HungLoad(double At, double Force, double Across = 0);
