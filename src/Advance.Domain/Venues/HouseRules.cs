using Advance.Domain.Facts;

namespace Advance.Domain.Venues;

/// <summary>What the venue and its licence ask; null where nothing was said.</summary>
/// <param name="MusicOff">When music must be off.</param>
/// <param name="Empty">When the building must be empty.</param>
/// <param name="Quiet">Hours without sound.</param>
/// <param name="SoundLimit">As written.</param>
/// <param name="Haze">What is allowed.</param>
/// <param name="Wind">Limits in the open air, as written.</param>
public sealed record HouseRules(
    Given<Moment>? MusicOff, Given<Moment>? Empty, Given<MomentRange>? Quiet, Given<string>? SoundLimit, Given<string>? Haze, Given<string>? Wind)
{
    /// <summary>Nothing said.</summary>
    public static readonly HouseRules None = new(null, null, null, null, null, null);
}
