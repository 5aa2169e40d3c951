using Advance.Domain;
using Advance.Domain.Figures;
using Advance.Planning;
using Advance.Tests.Workings;
using CsCheck;

namespace Advance.Tests.Planning.Power;

/// <summary>Every working behind a plan on several legs, checked by hand.</summary>
public sealed class LegWorkingTests
{
    [Fact]
    public void Each_formula_on_three_legs_gives_its_result() => LegGigs.Wye.Sample(things => Assert.Equal("", string.Join("; ", Faults(LegGigs.Of(things)))), iter: 20);

    [Fact]
    public void Each_formula_on_a_split_phase_gives_its_result() => LegGigs.Split.Sample(things => Assert.Equal("", string.Join("; ", Faults(LegGigs.Of(things, "120/240 V split-phase 60 Hz")))), iter: 20);

    private static IEnumerable<string> Faults(Brief brief) =>
        ByHand.Behind(Planner.Plan(brief).Figures.Select(stated => stated.How).OfType<Working>()).Select(ByHand.Fault).OfType<string>();
}
