namespace Advance.Paper.Tree;

/// <summary>How text is set. There are two weights, and three sizes under that of the sheet's title.</summary>
[Flags]
public enum TextStyle
{
    /// <summary>Body size, regular.</summary>
    Normal = 0,

    /// <summary>Bold.</summary>
    Strong = 1,

    /// <summary>Small and a little lighter.</summary>
    Quiet = 2,

    /// <summary>Large, as a heading is. Wins over <see cref="Quiet"/>.</summary>
    Large = 4,
}
