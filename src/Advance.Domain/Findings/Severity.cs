namespace Advance.Domain.Findings;

/// <summary>How much a finding weighs.</summary>
public enum Severity
{
    /// <summary>Worth knowing.</summary>
    Note,

    /// <summary>Somebody must look.</summary>
    Concern,

    /// <summary>Do not issue.</summary>
    Stop,

    /// <summary>The description cannot be read: there is no plan to judge.</summary>
    Error,
}
