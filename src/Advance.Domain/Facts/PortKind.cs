namespace Advance.Domain.Facts;

/// <summary>Which row of a device's connectors is meant.</summary>
public enum PortKind
{
    /// <summary><c>in</c></summary>
    Input,

    /// <summary><c>out</c></summary>
    Output,

    /// <summary><c>outlet</c>: mains.</summary>
    Outlet,

    /// <summary><c>link</c>: hands on what came in.</summary>
    Link,
}
