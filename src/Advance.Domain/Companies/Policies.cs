namespace Advance.Domain.Companies;

/// <summary>Settings of the company file. The defaults are common practice, without a source.</summary>
public sealed record Policies
{
    /// <summary>The settings shipped.</summary>
    public static readonly Policies Default = new();

    /// <summary><c>spare-mics</c>: of each kind of microphone.</summary>
    public Share SpareMics { get; init; } = new(10, 1);

    /// <summary><c>spare-di</c>: of each kind of direct box.</summary>
    public Share SpareDirectBoxes { get; init; } = new(10, 1);

    /// <summary><c>spare-stands</c>: of each size of stand.</summary>
    public Share SpareStands { get; init; } = new(10, 1);

    /// <summary><c>free-ports</c>: of each stage box, in and out.</summary>
    public Share FreePorts { get; init; } = new(10, 2);

    /// <summary><c>weight-margin</c>: what is added to a weight, by how it is known.</summary>
    public WeightMargins WeightMargin { get; init; } = new(0, 5, 10);

    /// <summary><c>cables</c>: how long a lead must be, and how leads are put together.</summary>
    public CablePolicies Cables { get; init; } = CablePolicies.Default;
}
