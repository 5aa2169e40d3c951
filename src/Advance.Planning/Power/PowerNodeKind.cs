namespace Advance.Planning;

/// <summary>What a node of the supply is.</summary>
public enum PowerNodeKind
{
    /// <summary>A service of the venue.</summary>
    Service,

    /// <summary>What several services hang on together.</summary>
    Upstream,

    /// <summary>The inlet of a distribution.</summary>
    Distribution,

    /// <summary>An outlet of a distribution, with its protective device.</summary>
    Outlet,

    /// <summary>The outlet by which a distribution hands on what came in.</summary>
    Link,
}
