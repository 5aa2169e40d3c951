namespace Advance.Planning;

/// <summary>Where a lead may change from one strand to another.</summary>
/// <param name="One">On one strand.</param>
/// <param name="Other">On the other.</param>
/// <param name="Cost">What that counts when ways are compared.</param>
internal readonly record struct Tie(OnStrand One, OnStrand Other, double Cost);
