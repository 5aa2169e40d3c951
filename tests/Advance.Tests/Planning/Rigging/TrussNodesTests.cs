using Advance.Domain.Facts;
using Advance.Domain.Stocks;
using Advance.Planning;
using UnitsNet;

namespace Advance.Tests.Planning.Rigging;

/// <summary>Where chords are braced, counted off by hand.</summary>
public sealed class TrussNodesTests
{
    [Theory]
    [InlineData(0, 0)]
    [InlineData(0.5, 0)]
    [InlineData(0.75, 0.25)]
    [InlineData(2.9, 0.1)]
    [InlineData(3.0, 0)]
    [InlineData(3.6, 0.1)]
    [InlineData(9.0, 0)]
    public void Nodes_are_every_half_metre_of_sections_of_three(double place, double away) =>
        Assert.Equal(away, TrussNodes.Away(Section(3, 0.5), place)!.Value, 1e-9);

    // Sections of 2.2 m with nodes every 0.5 m: the last bay of each is 0.2 m.
    [Theory]
    [InlineData(2.1, 0.1)]
    [InlineData(2.2, 0)]
    [InlineData(2.7, 0)]
    [InlineData(2.9, 0.2)]
    public void Each_section_counts_anew(double place, double away) =>
        Assert.Equal(away, TrussNodes.Away(Section(2.2, 0.5), place)!.Value, 1e-9);

    [Fact]
    public void Nobody_knows_where_they_are_of_which_its_maker_says_nothing() =>
        Assert.Null(TrussNodes.Away(new Truss(Given.Of(Length.FromMeters(3), Mark.Nowhere), 4, []), 1));

    private static Truss Section(double length, double apart) =>
        new(Given.Of(Length.FromMeters(length), Mark.Nowhere), 4, []) { Nodes = Given.Of(Length.FromMeters(apart), Mark.Nowhere) };
}
