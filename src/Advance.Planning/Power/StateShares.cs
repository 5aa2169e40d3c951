using Advance.Domain.Companies;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;

namespace Advance.Planning;

/// <summary>
/// How hard each load works in each show state, as a share of its draw. Common practice, no source: it is idle or it is on. Wedges and
/// backline are idle unless somebody performs; all sound is idle at night, when the lights are what is left on.
/// </summary>
internal static class StateShares
{
    /// <summary>Every state; where two are alike, the first is named.</summary>
    public static readonly IReadOnlyList<ShowState> States = [ShowState.Show, ShowState.SoundCheck, ShowState.Changeover, ShowState.Build, ShowState.Night];

    /// <summary>A state as it is written in a gig.</summary>
    public static string Word(ShowState state) => state switch
    {
        ShowState.SoundCheck => "sound check",
        ShowState.Changeover => "changeover",
        ShowState.Build => "build",
        ShowState.Night => "night",
        _ => "show",
    };

    /// <summary>The share in per cent; null where it is all of it.</summary>
    public static Figure<double>? Of(PowerUse use, ShowState state, Policies policies) =>
        IsIdle(use, state) ? Figure.Policy("idle-share", policies.IdleShare) : null;

    private static bool IsIdle(PowerUse use, ShowState state) => (use, state) switch
    {
        (_, ShowState.Show or ShowState.SoundCheck) => false,
        (PowerUse.Monitor or PowerUse.Backline, _) => true,
        (PowerUse.Loudspeaker or PowerUse.Sound, ShowState.Night) => true,
        _ => false,
    };
}
