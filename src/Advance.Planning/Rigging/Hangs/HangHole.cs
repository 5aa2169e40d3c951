using Advance.Domain.Figures;
using Advance.Domain.Stocks;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A hole of the frame, and how a hang would tilt on that alone.</summary>
/// <param name="Hole">The hole.</param>
/// <param name="Tilt">Nose down positive; unknown where the hang is, or where it would turn over.</param>
public sealed record HangHole(FrameHole Hole, Figure<Angle> Tilt);
