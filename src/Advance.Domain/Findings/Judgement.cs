using Advance.Domain.Facts;
using Advance.Domain.Figures;

namespace Advance.Domain.Findings;

/// <summary>What a rule made of one thing, also where it holds: it fills utilisation cells and proves that the rule looked.</summary>
/// <param name="Where">The thing that was judged.</param>
/// <param name="At">Where somebody wrote what it rests on.</param>
/// <param name="Verdict">One of three outcomes.</param>
/// <param name="RestsOn">The open questions behind it.</param>
public record Judgement(Address Where, Mark At, Verdict Verdict, Doubts RestsOn);
