namespace Advance.Planning;

/// <summary>What a choice of ports is weighed by, most important first. Less is better.</summary>
internal enum PortAim
{
    /// <summary>Lines that are not where somebody fixed them, although each could be.</summary>
    GivenUp,

    /// <summary>Lines for every act that have no port.</summary>
    AllDayWithout,

    /// <summary>Lines without a port.</summary>
    Without,

    /// <summary>Lines that need 48 V on a port that gives none.</summary>
    Unfit,

    /// <summary>Lines that were issued with another port.</summary>
    Changed,

    /// <summary>Who goes without a port: rather high channels than low ones.</summary>
    LowWithout,

    /// <summary>Ports more than one for a source that several acts share.</summary>
    Moved,

    /// <summary>Lines that are not on the port of their own number.</summary>
    Crooked,

    /// <summary>Decimetres of lead.</summary>
    Lead,
}
