namespace Advance.Domain.Stocks;

/// <summary>What parts lows from highs.</summary>
public enum Filter
{
    /// <summary><c>high-pass</c>: takes the lows out.</summary>
    HighPass,

    /// <summary><c>low-pass</c>: takes the highs out.</summary>
    LowPass,
}
