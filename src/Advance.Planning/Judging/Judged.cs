using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary>What a rule made of one thing.</summary>
/// <param name="Judgement">Also where it holds.</param>
/// <param name="Finding">Null where it holds.</param>
public sealed record Judged(Judgement Judgement, Finding? Finding);
