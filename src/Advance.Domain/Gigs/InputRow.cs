using Advance.Domain.Facts;
using Advance.Domain.Places;

namespace Advance.Domain.Gigs;

/// <summary>One line of an input list; a range of channels is a stereo pair or a group that is patched together.</summary>
/// <param name="Channels">As on the desk.</param>
/// <param name="Source">What is heard.</param>
/// <param name="Device">Microphone or DI, and how many; null where nothing is needed. Its doubt is about who brings what.</param>
/// <param name="Stand">Size of stand, or <c>clip</c>; empty for none.</param>
/// <param name="Place">Where it stands.</param>
/// <param name="From">Whose microphone or DI it is; null means the shop's.</param>
/// <param name="Port">The port fixed by hand; null where it is worked out.</param>
/// <param name="Note">Anything else.</param>
/// <param name="At">Where it was written.</param>
public sealed record InputRow(
    NumberRange Channels,
    string Source,
    Given<CountedItem>? Device,
    string Stand,
    Given<Place>? Place,
    Given<Owner>? From,
    Given<PortRange>? Port,
    string Note,
    Mark At);
