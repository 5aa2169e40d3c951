using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>HSE, manual handling (L23, INDG143): 25 kg is the highest figure of the filter. More hands are common practice, no source.</summary>
public sealed class HseManualHandling
{
    [Fact]
    public void One_person_lifts_25_kilograms() => Assert.Equal(Mass.FromKilograms(25), Lifting.One);
}
