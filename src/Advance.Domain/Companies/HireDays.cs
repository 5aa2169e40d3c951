namespace Advance.Domain.Companies;

/// <summary>How long hired things are kept beside the days of the gig.</summary>
/// <param name="Before">Days that they come in before the first.</param>
/// <param name="After">Days that they go back after the last.</param>
public sealed record HireDays(int Before, int After)
{
    /// <summary>The settings shipped.</summary>
    public static readonly HireDays Default = new(1, 1);
}
