using Advance.Handbook;

namespace Advance.Published;

/// <summary>AES14-1992 and the three-pin connector of IEC 61076-2-103: pin 1 screen, 2 hot, 3 cold.</summary>
public sealed class Aes14Xlr
{
    [Fact]
    public void Pin_1_screen_2_hot_3_cold() =>
        Assert.Equal(["1 screen", "2 hot (+)", "3 cold (-)"], XlrPins.Audio.Select(pin => $"{pin.Number} {pin.Carries}"));

    [Fact]
    public void Lighting_control_has_its_plus_on_the_other_pin() =>
        Assert.NotEqual(XlrPins.Audio[1].Carries[^2], XlrPins.LightingControl[1].Carries[^1]);
}
