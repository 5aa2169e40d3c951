using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The worst that a neutral carries.</summary>
/// <param name="Current">All orders together; unknown where a draw is.</param>
/// <param name="State">The show state in which it is so.</param>
/// <param name="On">The legs that are then on: with one leg off a neutral often carries more than with all on.</param>
/// <param name="Orders">The fundamental and each harmonic.</param>
/// <param name="Assumed">Names of loads whose third harmonic nobody gave, so that a policy stands for it.</param>
public sealed record NeutralCase(
    Figure<ElectricCurrent> Current, ShowState State, IReadOnlyList<string> On, IReadOnlyList<HarmonicCurrent> Orders, IReadOnlyList<string> Assumed)
{
    /// <summary>The same in words: <c>show, with L1 and L2 on</c>.</summary>
    public string Words => $"{StateShares.Word(State)}, with {string.Join(" and ", On)} on";
}
