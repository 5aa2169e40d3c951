namespace Advance.Planning;

/// <summary>A hoist that holds a truss.</summary>
/// <param name="At">m from the truss's left end.</param>
/// <param name="Stiffness">How many newtons stretch sling, chain, steel and point by a metre, together, more than 0; null where unknown: then they do not give.</param>
public sealed record HungHoist(double At, double? Stiffness = null)
{
    /// <summary>Which end of its chain the hoist's body is at: true where it climbs with the truss, its hook up at the point.</summary>
    public bool BodyAtTruss { get; init; }
}
