namespace Advance.Planning;

/// <summary>Why a run has no leads.</summary>
public enum RunGap
{
    /// <summary>It has.</summary>
    None,

    /// <summary>Nobody knows where an end is, or what plugs into it.</summary>
    NotKnown,

    /// <summary>No owned leads lead from one connector to the other.</summary>
    NothingMates,

    /// <summary>Owned leads fit, but no chain of them is long enough.</summary>
    NoneLongEnough,

    /// <summary>Long enough ones are owned, and all are used.</summary>
    AllTaken,
}
