using UnitsNet;

namespace Advance.Domain.Companies;

/// <summary>What is left at the ends of a lead, to reach and to tidy up: the <c>trims</c>. Common practice, no source.</summary>
public sealed record CableTrims
{
    /// <summary>The settings shipped.</summary>
    public static readonly CableTrims Default = new();

    /// <summary><c>mic-stand</c>: at a microphone or DI.</summary>
    public Length MicStand { get; init; } = Length.FromMeters(2);

    /// <summary><c>mic-box</c>: at the stage box that a microphone goes to.</summary>
    public Length MicBox { get; init; } = Length.FromMeters(1);

    /// <summary><c>lead</c>: at each end of a loudspeaker, link, mains or control lead.</summary>
    public Length Lead { get; init; } = Length.FromMeters(1);

    /// <summary><c>feeder-source</c>: where a feeder is tied in.</summary>
    public Length FeederSource { get; init; } = Length.FromMeters(3);

    /// <summary><c>feeder-box</c>: at the distribution that it feeds.</summary>
    public Length FeederBox { get; init; } = Length.FromMeters(2);

    /// <summary><c>hall</c>: at each end of a multi or a network lead that goes out into the hall.</summary>
    public Length Hall { get; init; } = Length.FromMeters(5);
}
