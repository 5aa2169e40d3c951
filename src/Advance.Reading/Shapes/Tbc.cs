namespace Advance.Reading.Shapes;

/// <summary>How much of a value may be left open at a place.</summary>
internal enum Tbc
{
    /// <summary>A value is needed; <c>TBC</c> may follow it.</summary>
    AfterValue,

    /// <summary>A value, or <c>TBC</c> instead of it.</summary>
    Instead,

    /// <summary>The same, or nothing at all after the colon.</summary>
    OrNothing,
}
