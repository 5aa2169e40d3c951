namespace Advance.Domain.Findings;

/// <summary>A severity as it is written, on paper, on a terminal and for other programs.</summary>
public static class SeverityWords
{
    /// <summary><c>error</c>, <c>stop</c>, <c>concern</c> or <c>note</c>.</summary>
    public static string Word(this Severity severity) => severity switch
    {
        Severity.Error => "error",
        Severity.Stop => "stop",
        Severity.Concern => "concern",
        _ => "note",
    };
}
