using UnitsNet;

namespace Advance.Handbook;

/// <summary>
/// How many hands a lift needs. Common practice, no source, for things with handles; one person's 25 kg is also where the UK's guidance on manual
/// handling (HSE L23) starts to ask for a closer look. A filter, not a legal limit.
/// </summary>
public static class Lifting
{
    /// <summary>The most that one person lifts.</summary>
    public static readonly Mass One = Mass.FromKilograms(25);

    /// <summary>The most that two lift.</summary>
    public static readonly Mass Two = Mass.FromKilograms(45);

    /// <summary>The most that four lift; above it forks or wheels.</summary>
    public static readonly Mass Four = Mass.FromKilograms(80);

    /// <summary>1, 2 or 4 hands by the limits that are common; null above them: forks or wheels.</summary>
    /// <param name="weight">0 kg or more.</param>
    public static int? Hands(Mass weight) => Hands(weight, One, Two, Four);

    /// <summary>1, 2 or 4 hands by a shop's own limits; null above them: forks or wheels.</summary>
    /// <param name="weight">0 kg or more.</param>
    /// <param name="one">The most for one.</param>
    /// <param name="two">The most for two.</param>
    /// <param name="four">The most for four.</param>
    /// <exception cref="ArgumentOutOfRangeException">The weight is negative.</exception>
    public static int? Hands(Mass weight, Mass one, Mass two, Mass four)
    {
        ArgumentOutOfRangeException.ThrowIfNegative(weight.Kilograms);
        if (weight <= one)
        {
            return 1;
        }

        if (weight <= two)
        {
            return 2;
        }

        return weight <= four ? 4 : null;
    }
}
