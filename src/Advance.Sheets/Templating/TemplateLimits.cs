namespace Advance.Sheets.Templating;

/// <summary>Where a template that runs away is stopped. Each limit is a fault with its place, never a silent cut.</summary>
public sealed record TemplateLimits
{
    /// <summary>Rounds of all loops of one sheet together, 1 or more. Default 1,000,000.</summary>
    public int Rounds { get; init; } = 1_000_000;

    /// <summary>Steps of the engine (a statement, an operator, a name) for one sheet, 1 or more. Default 50,000,000.</summary>
    public long Steps { get; init; } = 50_000_000;

    /// <summary>How deep partials may include partials, 1 to 100. Default 30.</summary>
    public int Depth { get; init; } = 30;

    /// <summary>What one sheet may write, in UTF-16 units, 1 or more. Default 32,000,000.</summary>
    public int Output { get; init; } = 32_000_000;

    /// <summary>How long one text may grow inside a template, in UTF-16 units, 1 or more. Default 1,000,000.</summary>
    public int Text { get; init; } = 1_000_000;
}
