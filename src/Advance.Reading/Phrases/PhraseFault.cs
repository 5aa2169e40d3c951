using Advance.Domain.Wording;

namespace Advance.Reading.Phrases;

/// <summary>Why a text is not what was expected.</summary>
/// <param name="Offset">Where in the text.</param>
/// <param name="Length">How much of it.</param>
/// <param name="Rule">The finding's rule, without <c>reading/</c>.</param>
/// <param name="Says">What is wrong.</param>
/// <param name="Cure">What to write.</param>
internal sealed record PhraseFault(int Offset, int Length, string Rule, Words Says, Words Cure);
