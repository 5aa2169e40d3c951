namespace Advance.Handbook;

/// <summary>A support that pushes as well as it pulls, as the published cases have it.</summary>
/// <param name="At">m from the beam's left end.</param>
public sealed record BeamSupport(double At)
{
    /// <summary>Spring stiffness, N/m; null for a support that does not give, 0 for one that holds nothing.</summary>
    public double? Stiffness { get; init; }

    /// <summary>How much higher it stands than the straight line, m; negative where it is lower.</summary>
    public double Offset { get; init; }

    /// <summary>Whether it holds the beam against turning too.</summary>
    public bool IsClamped { get; init; }

    /// <summary>Whether it holds anything up.</summary>
    public bool Holds => Stiffness is null or > 0;
}
