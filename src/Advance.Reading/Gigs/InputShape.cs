using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>One line of an input list.</summary>
internal static class InputShape
{
    public static readonly RecordShape<InputRow> It = new("input", "One line of an input list.", keys =>
    {
        var channels = keys.Needed("ch", Written.Numbers, "Channel on the desk, or a range that is patched together.");
        var source = keys.Needed("source", Written.Text, "What is heard.");
        var device = keys.Open("mic-or-di", Written.Counted, "Microphone or DI, and how many.");
        var stand = keys.Defaulted("stand", Written.Text, "", "Size of stand, or clip.", "none");
        var place = keys.Open("place", Written.Place, "Where it stands.");
        var from = keys.Open("from", Written.Owner, "Whose microphone or DI it is; without it the shop's.");
        var port = keys.Open("port", Written.Ports, "The port, where it is fixed by hand.");
        var note = keys.Defaulted("note", Written.Text, "", "Anything else.", "nothing");
        return row => new InputRow(
            channels(row), source(row), device(row), stand(row), place(row), from(row), port(row), note(row), row.At);
    });
}
