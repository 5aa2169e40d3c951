namespace Advance.Handbook;

/// <summary>How many to bring, or to keep free, beside those in use. Common practice, no source.</summary>
public static class Spares
{
    // 10 % of 10 is exactly 1, whatever a floating-point product makes of it.
    private const double Slack = 1e-9;

    /// <summary>A share of those in use, rounded up, and at least so many; none where none is in use.</summary>
    /// <param name="atLeast">Pieces, 0 or more.</param>
    /// <param name="percent">0 or more.</param>
    /// <param name="inUse">Pieces, 0 or more.</param>
    /// <exception cref="ArgumentOutOfRangeException">An argument is negative.</exception>
    public static int Of(int atLeast, double percent, int inUse)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(atLeast);
        ArgumentOutOfRangeException.ThrowIfNegative(percent);
        ArgumentOutOfRangeException.ThrowIfNegative(inUse);
        return inUse == 0 ? 0 : Math.Max(atLeast, (int)Math.Ceiling((percent * inUse / 100) - Slack));
    }
}
