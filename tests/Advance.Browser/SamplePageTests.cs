using Microsoft.Playwright;

namespace Advance.Browser;

/// <summary>The offline page of a sample gig, as a phone and a desk see it.</summary>
public sealed class SamplePageTests
{
    private const int Phone = Pages.Phone;
    private const int Desk = Pages.Desk;

    [SkippableTheory]
    [InlineData(Phone)]
    [InlineData(Desk)]
    public Task The_page_shows_its_sheets_and_asks_for_nothing(int width) => Browser.Open(Pages.Sample, width, async page =>
    {
        var asked = new List<string>();
        page.Request += (_, request) => asked.Add(request.Url);
        await page.ReloadAsync();

        Assert.All(asked, url => Assert.StartsWith("file:", url));
        var text = await page.InnerTextAsync("body");
        Assert.Contains("Harvest Supper", text);
        Assert.Contains("HOLD", text);
        Assert.Contains("Snare: top, #2", text);
    });

    [SkippableFact]
    public Task The_stage_plot_is_drawn_with_its_letters() => Browser.Open(Pages.Sample, Desk, async page =>
    {
        var plot = page.Locator("section[id^=stage-plot] svg").First;
        Assert.True(await plot.IsVisibleAsync());
        Assert.Equal(0, await page.Locator("svg path path").CountAsync());
        var words = await plot.Locator("text").AllTextContentsAsync();
        Assert.Contains(words, word => word.Contains("audience", StringComparison.Ordinal));
        Assert.Contains(words, word => word.Contains("Main SR", StringComparison.Ordinal));
    });

    [SkippableFact]
    public Task A_phone_scrolls_one_way_only() => Browser.Open(Pages.Sample, Phone, async page =>
        Assert.True(await page.EvaluateAsync<int>("document.documentElement.scrollWidth") <= Phone + 1));

    [SkippableFact]
    public Task No_script_error_is_raised() => Browser.Open(Pages.Sample, Desk, async page =>
    {
        var errors = new List<string>();
        page.PageError += (_, error) => errors.Add(error);
        await page.ReloadAsync(new PageReloadOptions { WaitUntil = WaitUntilState.Load });
        Assert.Empty(errors);
    });
}
