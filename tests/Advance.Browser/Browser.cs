using Microsoft.Playwright;

namespace Advance.Browser;

/// <summary>A headless Chromium without a network. Where there is none the test says that it was skipped; in the gate it fails.</summary>
internal static class Browser
{
    private static readonly string[] Places = ["/usr/bin/chromium", "/usr/bin/chromium-browser", "/usr/bin/google-chrome"];

    private static readonly string[] Flags =
    [
        "--no-sandbox", "--disable-gpu", "--disable-quic", "--no-first-run", "--disable-background-networking", "--disable-component-update", "--disable-sync",
    ];

    /// <summary>Opens a page of the given width in pixels from a file's text, by day or in the dark, and hands it to a test.</summary>
    public static async Task Open(string html, int width, Func<IPage, Task> test, bool isDark = false)
    {
        var program = Array.Find(Places, File.Exists);
        if (program is null && Environment.GetEnvironmentVariable("CI") == "true")
        {
            Assert.Fail("The gate needs Chromium.");
        }

        Skip.If(program is null, "There is no Chromium on this machine.");
        var file = Path.Combine(Path.GetTempPath(), $"advance-{Path.GetRandomFileName()}.html");
        await File.WriteAllTextAsync(file, html);
        try
        {
            using var playwright = await Playwright.CreateAsync();
            await using var browser = await playwright.Chromium.LaunchAsync(new() { ExecutablePath = program, Headless = true, Args = Flags });
            await using var context = await browser.NewContextAsync(new() { Offline = true, ViewportSize = new() { Width = width, Height = 800 }, ColorScheme = isDark ? ColorScheme.Dark : ColorScheme.Light });
            var page = await context.NewPageAsync();
            await page.GotoAsync(new Uri(file).AbsoluteUri);
            await test(page);
        }
        finally
        {
            File.Delete(file);
        }
    }
}
