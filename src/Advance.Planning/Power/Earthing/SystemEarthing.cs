namespace Advance.Planning;

/// <summary>How a supply is earthed.</summary>
internal enum SystemEarthing
{
    /// <summary>A separate conductor from the source on.</summary>
    TnS,

    /// <summary>One conductor for neutral and earth as far as the building, then two.</summary>
    TnCS,

    /// <summary>An electrode of its own.</summary>
    TT,

    /// <summary>The source is not joined to earth.</summary>
    IT,

    /// <summary>A source whose conductors are joined to no other system: a generator, a transformer.</summary>
    SeparatelyDerived,
}
