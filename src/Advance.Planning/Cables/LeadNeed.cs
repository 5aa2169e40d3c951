namespace Advance.Planning;

/// <summary>What a lead must do, in words: <c>mains from 16 A blue to iec 10 A</c>.</summary>
internal static class LeadNeed
{
    /// <summary>Of a run.</summary>
    public static string Of(Run run) => $"{run.Link.Carries} from {run.Link.From.Connector} to {run.Link.To.Connector}";
}
