using Advance.Domain.Facts;
using Advance.Domain.Places;
using UnitsNet;

namespace Advance.Domain.Gigs;

/// <summary>Something that stands somewhere under a name of its own: backline, a riser, a table.</summary>
/// <param name="Name">Its name; a place may be said as <c>at</c> it.</param>
/// <param name="Item">Its kind in the stock; null where it comes from somebody else or is only drawn.</param>
/// <param name="Place">Its centre.</param>
/// <param name="Size">Across and deep; null means as its item.</param>
/// <param name="From">Whose it is; null means as the section says.</param>
/// <param name="Draws">What it draws from the mains, as on its plate; 0 for what needs none; null where not said.</param>
/// <param name="Note">Anything else.</param>
/// <param name="At">Where it was written.</param>
public sealed record Thing(
    string Name, string? Item, Given<Place> Place, Given<Size>? Size, Given<Owner>? From, Given<ElectricCurrent>? Draws, string Note, Mark At);
