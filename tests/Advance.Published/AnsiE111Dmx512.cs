using Advance.Handbook;

namespace Advance.Published;

/// <summary>ANSI E1.11 (DMX512-A): 512 slots, 32 unit loads, the terminator and the pins.</summary>
public sealed class AnsiE111Dmx512
{
    [Theory]
    [InlineData(1, 512, true)]
    [InlineData(2, 512, false)]
    [InlineData(512, 1, true)]
    [InlineData(513, 1, false)]
    [InlineData(0, 4, false)]
    [InlineData(509, 4, true)]
    [InlineData(510, 4, false)]
    public void A_universe_has_slots_1_to_512(int first, int count, bool inside) => Assert.Equal(inside, new SlotRange(first, count).IsInUniverse);

    [Theory]
    [InlineData(0, 0)]
    [InlineData(1, 1)]
    [InlineData(32, 1)]
    [InlineData(33, 2)]
    [InlineData(64, 2)]
    [InlineData(65, 3)]
    public void A_line_drives_32_unit_loads(int loads, int lines) => Assert.Equal(lines, LightingControl.Lines(loads, LightingControl.UnitLoadsOnLine));

    [Fact]
    public void Pins_are_common_minus_plus() =>
        Assert.Equal(["1 common", "2 data -", "3 data +"], XlrPins.LightingControl.Take(3).Select(pin => $"{pin.Number} {pin.Carries}"));

    [Fact]
    public void The_terminator_is_120_ohm() => Assert.Equal(120, LightingControl.TerminatorOhms);
}
