using Advance.Domain.Facts;
using Advance.Domain.Figures;
using UnitsNet;

namespace Advance.Planning;

/// <summary>A task before it has a time.</summary>
/// <param name="Address">Its name in the plan.</param>
/// <param name="Job">What it is done for.</param>
/// <param name="What">Verb first.</param>
/// <param name="Area">Where.</param>
/// <param name="Hands">How many it takes at once by policy.</param>
/// <param name="Skill">What the one who leads must be able to do; empty for anybody.</param>
/// <param name="Work">Time of one person; unknown where its extent is.</param>
/// <param name="After">What must be done before.</param>
internal sealed record TaskDraft(
    Address Address, Job Job, string What, string Area, int Hands, string Skill, Figure<Duration> Work, IReadOnlyList<Address> After)
{
    /// <summary>When it may start at the earliest; null where it may as soon as the rest is done.</summary>
    public Moment? NotBefore { get; init; }

    /// <summary>Whether it is a hold: it takes no time, and somebody signs it.</summary>
    public bool IsHold { get; init; }

    /// <summary>Who does or signs it that is nobody of the crew; null where the crew does.</summary>
    public string? By { get; init; }

    /// <summary>The open questions about its time and who does it.</summary>
    public Doubts RestsOn { get; init; } = Doubts.None;

    /// <summary>Kinds that are lifted in it, and in another task of its job only where that names them too.</summary>
    public IReadOnlyList<string> Lifted { get; init; } = [];

    /// <summary>What can hurt.</summary>
    public string Danger { get; init; } = "";

    /// <summary>What is done instead when it all goes out again; empty where nothing is.</summary>
    public string Undo { get; init; } = "";
}
