using UnitsNet;

namespace Advance.Planning;

/// <summary>Where a box of a hang is.</summary>
/// <param name="Box">The box.</param>
/// <param name="Tilt">How far it looks down.</param>
/// <param name="Pin">Its upper front pin.</param>
/// <param name="LowerPin">Its lower front pin, where the next one hangs.</param>
/// <param name="Centre">Its centre of gravity.</param>
public sealed record PlacedBox(HungBox Box, Angle Tilt, SidePoint Pin, SidePoint LowerPin, SidePoint Centre)
{
    /// <summary>Its four edges: upper front, upper back, lower front, lower back.</summary>
    public IReadOnlyList<SidePoint> Edges =>
    [
        .. from down in new[] { 0, Box.PinToPin }
        from forward in new[] { Box.Ahead, -Box.Behind }
        select Pin.Along(Tilt.Radians, forward, down),
    ];
}
