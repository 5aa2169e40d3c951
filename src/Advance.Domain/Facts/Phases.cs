namespace Advance.Domain.Facts;

/// <summary>How many live conductors a supply has, and how they lie.</summary>
public enum Phases
{
    /// <summary><c>single-phase</c>: one line and a neutral.</summary>
    Single,

    /// <summary><c>split-phase</c>: two lines, half a turn apart, and a neutral between them.</summary>
    Split,

    /// <summary><c>three-phase</c>: three lines, a third of a turn apart.</summary>
    Three,
}
