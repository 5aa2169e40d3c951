using Advance.Domain.Facts;
using Advance.Domain.Gigs;
using Advance.Reading.Shapes;

namespace Advance.Reading.Gigs;

/// <summary>A loose thing to bring.</summary>
internal static class ExtraShape
{
    public static readonly RecordShape<Extra> It = new("extra", "A loose thing to bring.", keys =>
    {
        var item = keys.Needed("item", Written.Name, "Its kind in the stock.");
        var count = keys.Open("count", Written.Between("count-from-1", 1, 100_000), "How many; without it one.");
        var from = keys.Open("from", Written.Owner, "Whose it is; without it the shop's.");
        var why = keys.Defaulted("why", Written.Text, "", "What for.", "not said");
        return row => new Extra(item(row), count(row) ?? Given.Of(1, row.At), from(row), why(row), row.At);
    });
}
