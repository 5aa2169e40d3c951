namespace Advance.Planning;

/// <summary>Which half of a pair of connectors it is.</summary>
internal enum LeadPlugSex
{
    /// <summary>Neither: it fits a socket of its family, and never another like it.</summary>
    None,

    /// <summary>With pins.</summary>
    Male,

    /// <summary>With holes.</summary>
    Female,
}
