using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>One piece of work of the load-in.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="What">Verb first.</param>
/// <param name="Area">Where.</param>
/// <param name="Start">When it can start; unknown where the call is.</param>
/// <param name="End">When it is done, with the hands there are.</param>
/// <param name="Hands">How many it takes at once.</param>
/// <param name="Skill">What they must be able to do; empty for anybody.</param>
/// <param name="After">Addresses of the tasks and holds that must be done before.</param>
/// <param name="IsHold">Nothing after it starts until somebody has signed.</param>
/// <param name="RestsOn">The open questions behind it.</param>
public sealed record CrewTask(
    Address Address,
    string What,
    string Area,
    Moment? Start,
    Moment? End,
    int Hands,
    string Skill,
    IReadOnlyList<Address> After,
    bool IsHold,
    Doubts RestsOn)
{
    /// <summary>What it is done for.</summary>
    public required Job Job { get; init; }

    /// <summary>How long it takes with those who do it; with as many as it takes where nobody is called; zero for a hold.</summary>
    public required Figure<Duration> Length { get; init; }

    /// <summary>Who does it, the one who leads first; who signs, for a hold. Empty where nobody is called.</summary>
    public required IReadOnlyList<string> Who { get; init; }

    /// <summary>Its heaviest lift; null where nothing is lifted or nobody weighed it.</summary>
    public Lift? Lift { get; init; }

    /// <summary>What can hurt, in a line; empty where nothing out of the ordinary can.</summary>
    public string Danger { get; init; } = "";

    /// <summary>What is done instead when it all goes out again, verb first; what stops everything, for a hold. Empty where nothing is.</summary>
    public string Undo { get; init; } = "";
}
