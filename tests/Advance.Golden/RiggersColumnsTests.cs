using Advance.Paper.Tree;
using Advance.Sheets;

namespace Advance.Golden;

/// <summary>What a rigger, a venue's engineer and a wind officer sign for has a column to be found in.</summary>
public sealed class RiggersColumnsTests
{
    [Theory]
    [InlineData("foundry-awards", "hoist-table", "hoist point x y along level rest moving least bound hook rating share high low low-read trim-read initials part carries may use breaks mass known at")]
    [InlineData("lantern-fair", "hoist-table", "hoist point x y along level rest moving least bound hook rating share high low low-read trim-read initials part carries may use breaks mass known at")]
    [InlineData("foundry-awards", "point-loads", "point x y steel hangs rest moving snag sideways bearing limit rated share accepted beam moment moment-share shear shear-share truss trim weight hoists below secondary")]
    [InlineData("lantern-fair", "point-loads", "point x y steel hangs rest rest-weight moving moving-weight snag limit rated share accepted truss trim weight hoists below secondary")]
    [InlineData("harvest-supper", "stability", "edge inside tips-at tipping sliding part holds known up")]
    [InlineData("lantern-fair", "stability", "what ready act stands from forecast takes done edge inside tips-at falls wind tipping sliding tips slides part holds known up front side coefficient source")]
    public void Has_a_column(string gig, string sheet, string columns)
    {
        var composed = Composer.Compose(Samples.Plan(gig), PackageRequest.Everything, CompanyFolder.None);
        var found = composed.Document.Sheets.Single(one => one.Id == sheet).Blocks.SelectMany(Tables).SelectMany(table => table.Columns).Select(column => column.Key).ToHashSet(StringComparer.Ordinal);
        Assert.Equal([], columns.Split(' ').Except(found));
    }

    private static IEnumerable<Table> Tables(Block block) => block switch
    {
        Table table => [table],
        Columns columns => columns.Parts.SelectMany(part => part.Blocks).SelectMany(Tables),
        KeepTogether keep => keep.Blocks.SelectMany(Tables),
        _ => [],
    };
}
