namespace Advance.Browser;

/// <summary>What the page can do beside being read: remember ticks, show one reader's sheets, find words.</summary>
public sealed class ToolsTests
{
    private const string FirstTick = "#pull-list .tick input";

    [SkippableFact]
    public Task A_tick_is_still_there_when_the_page_is_opened_again() => Browser.Open(Pages.Sample, Pages.Phone, async page =>
    {
        var ticks = page.Locator(FirstTick);
        await ticks.Nth(3).CheckAsync();
        await page.ReloadAsync();

        Assert.True(await ticks.Nth(3).IsCheckedAsync());
        Assert.False(await ticks.Nth(2).IsCheckedAsync());
    });

    [SkippableFact]
    public Task Ticks_are_taken_away_only_when_somebody_says_so() => Browser.Open(Pages.Sample, Pages.Desk, async page =>
    {
        var tick = page.Locator(FirstTick).First;
        await tick.CheckAsync();
        var isMeant = false;
        page.Dialog += (_, dialog) => _ = isMeant ? dialog.AcceptAsync() : dialog.DismissAsync();

        await page.ClickAsync("button[name=clear]");
        Assert.True(await tick.IsCheckedAsync());
        isMeant = true;
        await page.ClickAsync("button[name=clear]");
        Assert.False(await tick.IsCheckedAsync());
        await page.ReloadAsync();
        Assert.False(await tick.IsCheckedAsync());
    });

    [SkippableFact]
    public Task A_reader_sees_the_sheets_of_that_reader_and_still_does_tomorrow() => Browser.Open(Pages.Sample, Pages.Phone, async page =>
    {
        await page.SelectOptionAsync("select[name=reader]", "shop");
        await page.ReloadAsync();

        Assert.Equal("shop", await page.InputValueAsync("select[name=reader]"));
        Assert.True(await page.Locator("#pull-list").IsVisibleAsync());
        Assert.True(await page.Locator("#day-sheet").IsVisibleAsync());
        Assert.False(await page.Locator("#open-questions").IsVisibleAsync());
        Assert.Equal(await page.Locator("section.sheet:visible").CountAsync(), await page.Locator("nav li:visible").CountAsync());
    });

    [SkippableFact]
    public Task A_word_is_found_and_counted_and_all_else_is_out_of_the_way() => Browser.Open(Pages.Sample, Pages.Desk, async page =>
    {
        var rows = page.Locator("#pull-list tbody tr:visible");
        var before = await rows.CountAsync();
        await page.FillAsync("input[name=find]", "short boom");

        var after = await rows.CountAsync();
        Assert.InRange(after, 1, before - 1);
        Assert.Matches("^[1-9][0-9]* lines on [1-9][0-9]* sheets$", await page.InnerTextAsync("output[name=found]"));
        await page.Keyboard.PressAsync("Enter");
        Assert.Equal(1, await page.Locator(".here").CountAsync());
        await page.Keyboard.PressAsync("Escape");
        Assert.Equal(before, await rows.CountAsync());
    });

    [SkippableFact]
    public Task A_word_that_is_nowhere_is_found_nowhere() => Browser.Open(Pages.Sample, Pages.Desk, async page =>
    {
        await page.FillAsync("input[name=find]", "<img src=x onerror=alert(1)>");
        Assert.Equal("0 lines on 0 sheets", await page.InnerTextAsync("output[name=found]"));
    });

    [SkippableFact]
    public Task All_is_there_without_a_script() => Browser.Open(Pages.Sample.Replace("<script>", "<script type=\"text/plain\">", StringComparison.Ordinal), Pages.Desk, async page =>
    {
        Assert.False(await page.Locator("#tools").IsVisibleAsync());
        Assert.Equal(await page.Locator("section.sheet").CountAsync(), await page.Locator("section.sheet:visible").CountAsync());
    });

    [SkippableFact]
    public Task Ticks_work_where_the_device_keeps_nothing() => Browser.Open(
        Pages.Sample.Replace("window.localStorage", "(() => { throw new Error(); })()", StringComparison.Ordinal),
        Pages.Phone,
        async page =>
        {
            await page.Locator(FirstTick).First.CheckAsync();
            Assert.True(await page.Locator(FirstTick).First.IsCheckedAsync());
            Assert.True(await page.Locator("#tools").IsVisibleAsync());
        });
}
