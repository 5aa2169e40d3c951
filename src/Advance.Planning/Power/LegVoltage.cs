using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>The voltage of one leg to neutral, as shares of the nominal.</summary>
/// <param name="Leg"><c>L1</c>.</param>
/// <param name="Drop">Lost with everything in use; below 0 where it rises.</param>
/// <param name="Alone">Lost with this leg alone in use: mostly the most.</param>
/// <param name="Rise">How far it rises at the highest over all sets of legs, all at most: a light leg rises where the neutral carries the others' current. 0 or less where it never does.</param>
/// <param name="RiseOn">The legs that are then on.</param>
public sealed record LegVoltage(string Leg, Figure<Ratio> Drop, Figure<Ratio> Alone, Figure<Ratio> Rise, IReadOnlyList<string> RiseOn);
