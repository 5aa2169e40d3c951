namespace Advance.Planning;

/// <summary>Boxes that join neutral and earth inside.</summary>
internal static class NeutralLinks
{
    /// <summary>Those that hang on a service, in the order written.</summary>
    public static IReadOnlyList<SupplyPoint> Below(SupplyPoint service, Plan plan) =>
        [.. plan.Power.Distributions.Where(box => box.Origin == service.Service && box.DeviceKind?.Mains?.NeutralEarthLink is { IsKnown: true, Value: true })];
}
