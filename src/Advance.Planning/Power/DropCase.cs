namespace Advance.Planning;

/// <summary>What is on while a voltage is looked at.</summary>
/// <param name="On">The lines that are on, counted from 0; a value of its own bits, so that two of the same lines are equal.</param>
/// <param name="AtMost">Whether everything draws its most.</param>
/// <param name="Rises">Whether a rise is looked for, so that what nobody knows is taken as lifting the voltage most.</param>
internal readonly record struct DropCase(LineSet On, bool AtMost, bool Rises = false);
