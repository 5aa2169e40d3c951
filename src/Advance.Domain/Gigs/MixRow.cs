using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Domain.Gigs;

/// <summary>One mix for somebody on stage; a range of two is stereo.</summary>
/// <param name="Numbers">As on the desk.</param>
/// <param name="For">Who hears it.</param>
/// <param name="With">Wedge or in-ears, and how many; what is in no stock is the act's own.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="From">Whose it is; null means the shop's where the item is in the stock, the act's where it is not.</param>
/// <param name="Port">The port fixed by hand; null where it is worked out.</param>
/// <param name="Wants">What they want to hear.</param>
/// <param name="At">Where it was written.</param>
public sealed record MixRow(
    NumberRange Numbers,
    string For,
    Given<CountedItem>? With,
    Given<Place>? Place,
    Given<Owner>? From,
    Given<PortRange>? Port,
    string Wants,
    Mark At);
