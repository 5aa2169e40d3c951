using Advance.Domain.Venues;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>One link of the chain from road to stage.</summary>
internal static class AccessShape
{
    public static readonly RecordShape<AccessStep> It = new("access-step", "One link of the chain from road to stage: gate, dock, lift, door, corridor.", keys =>
    {
        var what = keys.Needed("what", Written.Text, "Its name.");
        var wide = keys.Open("wide", Written.Length, "Clear width.");
        var high = keys.Open("high", Written.Length, "Clear height.");
        var length = keys.Open("long", Written.Length, "How far the push is.");
        var turn = keys.Open("turn", Written.Angle, "How far the way turns here; wide is then measured across the way in, long across the way out.");
        var load = keys.Open("load", Written.Weight, "What a lift or ramp carries.");
        var steps = keys.Defaulted("steps", Written.Count, 0, "How many steps, up or down.", "0");
        var note = keys.Defaulted("note", Written.Text, "", "Anything else.", "nothing");
        return row => new AccessStep(what(row), wide(row), high(row), length(row), load(row), steps(row), note(row), row.At) { Turn = turn(row) };
    });
}
