using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>Something that is put up and that the sums of this package are not for.</summary>
/// <param name="Name">Its key.</param>
/// <param name="Kind">In words: a guyed tower.</param>
/// <param name="JoinedTo">What it is joined to; null for nothing.</param>
/// <param name="HasPeopleOn">Whether somebody climbs it or stands on it; null where nobody says.</param>
/// <param name="At">Where it was written.</param>
public sealed record Structure(string Name, string Kind, Given<string>? JoinedTo, Given<bool>? HasPeopleOn, Mark At);
