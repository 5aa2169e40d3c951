using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What the wind finds of a part: area times force coefficient, from each side.</summary>
/// <param name="Front">From the front.</param>
/// <param name="Side">From either side.</param>
/// <param name="Rear">From behind.</param>
/// <param name="Middle">How high the middle of these areas is.</param>
/// <param name="Coefficient">The force coefficient.</param>
/// <param name="Source">Where that coefficient stands, in words.</param>
public sealed record WindFaces(
    Figure<UnitsNet.Area> Front, Figure<UnitsNet.Area> Side, Figure<UnitsNet.Area> Rear, Figure<Length> Middle, Figure<double> Coefficient, string Source);
