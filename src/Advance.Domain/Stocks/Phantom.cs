namespace Advance.Domain.Stocks;

/// <summary>What 48 V on the line does to a microphone or DI.</summary>
public enum Phantom
{
    /// <summary>Makes no difference: <c>harmless</c>.</summary>
    Harmless,

    /// <summary>Does not work without: <c>needed</c>.</summary>
    Needed,

    /// <summary>May be damaged: <c>harmful</c>.</summary>
    Harmful,
}
