namespace Advance.Planning;

/// <summary>Why a circuit fixed by hand was not kept.</summary>
public enum GivenUpReason
{
    /// <summary>It names nothing that draws current.</summary>
    NamesNothing,

    /// <summary>It names a distribution that there is not.</summary>
    NoDistribution,

    /// <summary>What it names is fixed by a row before it.</summary>
    FixedBefore,

    /// <summary>It names several things that cannot be linked one to the next.</summary>
    NotLinked,

    /// <summary>The outlet is taken, does not exist or does not fit.</summary>
    NoOutlet,
}
