using Deque.AxeCore.Playwright;
using Microsoft.Playwright;

namespace Advance.Browser;

/// <summary>What an open engine of accessibility rules finds on the page: nothing.</summary>
public sealed class AxeTests
{
    [SkippableTheory]
    [InlineData(Pages.Phone, true)]
    [InlineData(Pages.Desk, false)]
    public Task Nothing_is_found_on_the_page(int width, bool isDark) =>
        Browser.Open(Pages.Sample, width, async page =>
        {
            var faults = await FaultsOf(page);
            Assert.True(faults.Count == 0, string.Join('\n', faults));
        }, isDark);

    [SkippableFact]
    public Task Something_is_found_where_something_is_wrong() => Browser.Open(
        Pages.Sample.Replace("--soft:#4a4a4a", "--soft:#d0d0d0", StringComparison.Ordinal).Replace("aria-label=", "data-label=", StringComparison.Ordinal),
        Pages.Desk,
        async page =>
        {
            var faults = await FaultsOf(page);
            Assert.Contains(faults, fault => fault.StartsWith("color-contrast", StringComparison.Ordinal));
            Assert.Contains(faults, fault => fault.StartsWith("label", StringComparison.Ordinal));
        });

    private static async Task<IReadOnlyList<string>> FaultsOf(IPage page)
    {
        var result = await page.RunAxe();
        return [.. result.Violations.Select(violation => $"{violation.Id}: {violation.Help}: {string.Join(" | ", violation.Nodes.Take(3).Select(node => node.Html))}")];
    }
}
