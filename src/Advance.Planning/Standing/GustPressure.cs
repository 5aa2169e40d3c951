using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a gust presses, as a figure.</summary>
internal static class GustPressure
{
    /// <summary>Of a gust at the height of the thing.</summary>
    public static Figure<Pressure> Of(Figure<Speed> gust) => Sum.Of("pressure of the gust", "q = 1.25 / 2 · v²", En1991.Pressure).Put("v", gust).Gives(speed => WindPressure.Of(speed));
}
