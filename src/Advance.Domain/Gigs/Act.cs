using Advance.Domain.Facts;

namespace Advance.Domain.Gigs;

/// <summary>Who plays.</summary>
/// <param name="Name">Its key.</param>
/// <param name="People">How many on stage.</param>
/// <param name="Sets">When it plays.</param>
/// <param name="Brings">What it brings, in its own words; drawn, patched and powered, never pulled.</param>
/// <param name="Backline">What of it stands on the stage.</param>
/// <param name="Inputs">What goes to the desks.</param>
/// <param name="Mixes">What comes back.</param>
/// <param name="At">Where it was written.</param>
public sealed record Act(
    string Name,
    Given<int> People,
    IReadOnlyList<Given<SetTime>> Sets,
    IReadOnlyList<CountedItem> Brings,
    IReadOnlyList<Thing> Backline,
    IReadOnlyList<InputRow> Inputs,
    IReadOnlyList<MixRow> Mixes,
    Mark At);
