using Advance.Domain.Facts;

namespace Advance.Domain.Findings;

/// <summary>A named person took a finding upon themselves.</summary>
/// <param name="Rule">The rule's name.</param>
/// <param name="Where">The thing, by the address or the words that the finding printed.</param>
/// <param name="Figures">The figures it was accepted at; it lapses when they change.</param>
/// <param name="By">Who.</param>
/// <param name="Why">The reason.</param>
/// <param name="At">Where the row stands.</param>
public sealed record Acceptance(string Rule, string Where, string Figures, string By, string Why, Mark At);
