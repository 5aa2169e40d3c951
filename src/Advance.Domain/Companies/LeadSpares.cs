namespace Advance.Domain.Companies;

/// <summary>Leads that are pulled more than are laid, by kind: the <c>spares</c> of cables. Common practice, no source.</summary>
public sealed record LeadSpares
{
    /// <summary>The settings shipped.</summary>
    public static readonly LeadSpares Default = new();

    /// <summary><c>mic</c>: of each length of microphone lead.</summary>
    public Share Mic { get; init; } = new(15, 2);

    /// <summary><c>mains</c>: of each length of mains and link lead, feeders aside.</summary>
    public Share Mains { get; init; } = new(10, 2);

    /// <summary><c>lighting-control</c>: of each length of lighting-control lead.</summary>
    public Share LightingControl { get; init; } = new(10, 2);

    /// <summary><c>adapters</c>: of each kind of adapter that is used.</summary>
    public Share Adapters { get; init; } = new(0, 1);
}
