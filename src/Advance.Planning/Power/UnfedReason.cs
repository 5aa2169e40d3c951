namespace Advance.Planning;

/// <summary>Why something found no outlet; the first that holds.</summary>
public enum UnfedReason
{
    /// <summary>No outlet takes its plug, also by way of a lead or an adapter that is owned.</summary>
    Connector,

    /// <summary>Outlets that take its plug give another voltage.</summary>
    Voltage,

    /// <summary>Outlets that take its plug give another frequency.</summary>
    Frequency,

    /// <summary>All that fit are taken.</summary>
    NoneLeft,
}
