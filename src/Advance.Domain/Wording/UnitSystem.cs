namespace Advance.Domain.Wording;

/// <summary>Which units the paper speaks; the input may mix freely.</summary>
public enum UnitSystem
{
    /// <summary>Metres and kilograms.</summary>
    Metric,

    /// <summary>Feet, inches and pounds.</summary>
    UsCustomary,
}
