using Advance.Domain.Facts;
using Advance.Domain.Places;
using Advance.Domain.Wording;

namespace Advance.Sheets.Views;

/// <summary>Which way a stack faces, as it is said to whoever turns it.</summary>
internal static class AimWords
{
    /// <summary><c>toe-in 5°</c>, <c>straight downstage</c>, <c>at dance floor</c>; a tag where it is still open.</summary>
    public static Cell Of(Given<Aim>? given, Aim usual, Speech speech, Cells cells) =>
        Cell.Of(Words(given?.Or(usual) ?? usual, speech)) with { Tbc = given?.Doubt is { } doubt ? cells.Note(doubt) : null };

    private static string Words(Aim aim, Speech speech) => aim switch
    {
        Aim.Toed { In.Degrees: 0 } => "straight downstage",
        Aim.Toed { In.Degrees: < 0 } toed => $"toe-out {speech.Say(-toed.In)}",
        Aim.Toed toed => $"toe-in {speech.Say(toed.In)}",
        Aim.AtPlace at => $"at {PlaceWords.Of(at.Target, speech)}",
        _ => "straight downstage",
    };
}
