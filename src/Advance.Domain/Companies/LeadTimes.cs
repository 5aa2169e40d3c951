namespace Advance.Domain.Companies;

/// <summary>How many days before the show papers must be with whom they are for.</summary>
/// <param name="Loads">Weights on a roof or a floor.</param>
/// <param name="Power">What is asked of a supply.</param>
/// <param name="Documents">Certificates and risk assessments.</param>
/// <param name="Patch">Plots and input lists.</param>
/// <param name="Crew">Names of those who come.</param>
public sealed record LeadTimes(int Loads, int Power, int Documents, int Patch, int Crew)
{
    /// <summary>The settings shipped.</summary>
    public static readonly LeadTimes Default = new(21, 14, 14, 7, 7);
}
