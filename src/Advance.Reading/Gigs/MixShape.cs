using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>One mix for somebody on stage.</summary>
internal static class MixShape
{
    public static readonly RecordShape<MixRow> It = new("mix", "One mix for somebody on stage.", keys =>
    {
        var numbers = keys.Needed("mix", Written.Numbers, "Number on the desk; a range of two is stereo.");
        var listener = keys.Needed("for", Written.Text, "Who hears it.");
        var with = keys.Open("with", Written.Counted, "Wedge or in-ears, and how many; what is in no stock is the act's own.");
        var place = keys.Open("place", Written.Place, "Where it stands.");
        var from = keys.Open("from", Written.Owner, "Whose it is; without it the shop's for what is in the stock, the act's for what is not.");
        var port = keys.Open("port", Written.Ports, "The port, where it is fixed by hand.");
        var wants = keys.Defaulted("wants", Written.Text, "", "What they want to hear.", "nothing");
        return row => new MixRow(numbers(row), listener(row), with(row), place(row), from(row), port(row), wants(row), row.At);
    });
}
