using UnitsNet;

namespace Advance.Domain.Stocks;

/// <summary>Where one foot is, from the middle of what it carries.</summary>
/// <param name="Across">Towards stage left of a thing that faces the audience; negative to the other side.</param>
/// <param name="Back">Towards its rear; negative to its front.</param>
public readonly record struct Foot(Length Across, Length Back);
