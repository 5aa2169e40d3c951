using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Domain.Venues;

/// <summary>One link of the chain from road to stage: gate, dock, lift, door, corridor.</summary>
/// <param name="What">Its name.</param>
/// <param name="Wide">Clear width.</param>
/// <param name="High">Clear height.</param>
/// <param name="Long">How far the push is.</param>
/// <param name="Load">What a lift or ramp carries.</param>
/// <param name="Steps">How many, up or down.</param>
/// <param name="Note">Anything else.</param>
/// <param name="At">Where it was written.</param>
public sealed record AccessStep(
    string What, Given<Length>? Wide, Given<Length>? High, Given<Length>? Long, Given<Mass>? Load, int Steps, string Note, Mark At)
{
    /// <summary>How far the way turns here, from how one comes in to how one goes out; null where it goes straight on.</summary>
    public Given<Angle>? Turn { get; init; }
}
