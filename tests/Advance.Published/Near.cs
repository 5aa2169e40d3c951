namespace Advance.Published;

/// <summary>Compares with a number as it was printed.</summary>
internal static class Near
{
    /// <summary>Within half a unit of the last place printed, and a hair for the floating point.</summary>
    public static void AsPrinted(string printed, double actual)
    {
        var point = printed.IndexOf('.', StringComparison.Ordinal);
        var decimals = point < 0 ? 0 : printed.Length - point - 1;
        Within(double.Parse(printed, System.Globalization.CultureInfo.InvariantCulture), actual, (0.5 * Math.Pow(10, -decimals)) + 1e-9);
    }

    /// <summary>Within a relative tolerance: for what was rounded on its way.</summary>
    public static void WithinPercent(double expected, double actual, double percent) => Within(expected, actual, Math.Abs(expected) * percent / 100);

    /// <summary>Within so much either way.</summary>
    public static void Within(double expected, double actual, double tolerance) =>
        Assert.True(Math.Abs(expected - actual) <= tolerance, $"published {expected}, worked out {actual}, allowed {tolerance} either way");
}
