namespace Advance.Planning;

/// <summary>The conductors of a cable on which voltage is lost.</summary>
internal enum DropConductors
{
    /// <summary>Lines and neutral, as thick as each other.</summary>
    All,

    /// <summary>Lines alone.</summary>
    Lines,

    /// <summary>The neutral alone.</summary>
    Neutral,
}
