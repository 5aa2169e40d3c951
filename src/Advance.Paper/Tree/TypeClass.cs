namespace Advance.Paper.Tree;

/// <summary>How far away and in what light a sheet is read; it sets the size of all its type.</summary>
public enum TypeClass
{
    /// <summary>Read at a table: body 9.5 pt, nothing under 7 pt.</summary>
    Desk,

    /// <summary>Read standing, in bad light: body 12 pt, nothing under 10 pt.</summary>
    Floor,

    /// <summary>Taped to a wall or a lid: body 14 pt, nothing under 10 pt.</summary>
    TapeUp,
}
