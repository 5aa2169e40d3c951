namespace Advance.Handbook;

/// <summary>One pin of a connector.</summary>
/// <param name="Number">As moulded on it.</param>
/// <param name="Carries">In words.</param>
public sealed record Pin(int Number, string Carries);
