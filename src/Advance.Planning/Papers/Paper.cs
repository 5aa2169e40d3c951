namespace Advance.Planning;

/// <summary>A certificate or a paper that somebody must have before the show.</summary>
/// <param name="What">Its name.</param>
/// <param name="From">Who sends it.</param>
/// <param name="To">Who must have and accept it.</param>
/// <param name="Because">What in this gig asks for it.</param>
/// <param name="Days">How many days before the show, by policy.</param>
/// <param name="Policy">Which of the lead times that is.</param>
/// <param name="DueBy">That day; null where the date of the show is unknown.</param>
public sealed record Paper(string What, string From, string To, string Because, int Days, string Policy, DateOnly? DueBy);
