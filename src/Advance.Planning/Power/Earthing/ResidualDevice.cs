using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A residual-current device on the way to a load: that of an outlet, or of a service.</summary>
/// <param name="Point">Where it is.</param>
/// <param name="Rating">Rated residual current, more than 0.</param>
/// <param name="Type">Its type; null where nobody says.</param>
/// <param name="Delay">How long it waits; null where nobody says.</param>
internal sealed record ResidualDevice(SupplyPoint Point, Figure<ElectricCurrent> Rating, Given<string>? Type, Given<Duration>? Delay)
{
    /// <summary>What kinds of current it sees; null where nobody knows.</summary>
    public Handbook.ResidualType? Sees => KindOf(Type);

    /// <summary>Whether it waits for those behind it; null where nobody knows.</summary>
    public bool? IsDelayed => Delay is { IsKnown: true } said ? said.Value.Seconds > 0 : null;

    /// <summary>The open questions about what it sees.</summary>
    public Doubts TypeRestsOn => Rating.RestsOn.With(Doubts.Of(Type?.Doubt));

    /// <summary>The open questions about when it opens.</summary>
    public Doubts DelayRestsOn => Rating.RestsOn.With(Doubts.Of(Delay?.Doubt));

    /// <summary>The one at a place; null where there is none, or nobody knows of one. Nought is written for none.</summary>
    public static ResidualDevice? At(SupplyPoint point)
    {
        var given = point.Row?.Residual ?? point.Service?.ResidualProtection;
        return given is { IsKnown: true } rated && rated.Value.Amperes > 0
            ? new ResidualDevice(point, Figure.From(rated), point.Row is { } row ? row.ResidualType : point.Service!.ResidualType, point.Row is { } outlet ? outlet.ResidualDelay : point.Service!.ResidualDelay)
            : null;
    }

    /// <summary>All that are known of on the way from a place to its service, the nearest first.</summary>
    public static IReadOnlyList<ResidualDevice> Above(SupplyPoint point) => [.. point.Upwards.Select(At).OfType<ResidualDevice>()];

    /// <summary>A type as written; null where nobody knows.</summary>
    public static Handbook.ResidualType? KindOf(Given<string>? written) => written is { IsKnown: true } said ? said.Value switch
    {
        "AC" => Handbook.ResidualType.AC,
        "A" => Handbook.ResidualType.A,
        "F" => Handbook.ResidualType.F,
        "B" => Handbook.ResidualType.B,
        _ => null,
    }
    : null;
}
