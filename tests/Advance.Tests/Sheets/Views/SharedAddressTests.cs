using Advance.Sheets.Views;

namespace Advance.Tests.Sheets.Views;

public sealed class SharedAddressTests
{
    [Theory]
    [InlineData("power/…/at-most", "A/1/L1 B/2", "power/A/1/L1/at-most power/B/2/at-most")]
    [InlineData("rigging/T1/…", "carries moves", "rigging/T1/carries rigging/T1/moves")]
    [InlineData("…/weight", "load rigging", "load/weight rigging/weight")]
    [InlineData("", "load rigging", "load rigging")]
    [InlineData("", "load/weight", "load/weight")]
    [InlineData("a/b/…", "c b/c", "a/b/c a/b/b/c")]
    public void What_all_share_is_said_once(string shared, string own, string addresses)
    {
        var all = addresses.Split(' ');
        var found = SharedAddress.Of(all);
        Assert.Equal(shared, found.Text);
        Assert.Equal(own.Split(' '), all.Select(found.Own));
    }
}
