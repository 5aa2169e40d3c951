using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Gigs;

namespace Advance.Sheets.Views;

/// <summary>Asks an act what is open about it, in words of its own input list and not of the file that the gig was written in.</summary>
internal static class ActQuestionWords
{
    private const string Separator = " / ";

    /// <summary><c>channel 12, Fiddle: who brings the microphone or DI?</c>; the path in words where there are no better ones.</summary>
    public static string Of(Doubt doubt, Act act) => doubt.Subject.Split(Separator) switch
    {
        ["acts", _, "inputs", var channels, var field] => $"Channel {channels}{SourceOf(channels, act)}: {Field(field)}",
        ["acts", _, "mixes", var mix, var field] => $"Mix {mix}: {Field(field)}",
        ["acts", _, "people"] => "How many of you are on stage?",
        ["acts", _, "sets", ..] => "When do you play, and how long?",
        ["acts", _, "brings", ..] => "What do you bring?",
        ["acts", _, .. var rest] when rest.Length > 0 => string.Join(", ", rest).Replace('-', ' '),
        _ => Cells.Subject(doubt),
    };

    private static string SourceOf(string channels, Act act)
    {
        var first = channels.Split('-')[0];
        var row = act.Inputs.FirstOrDefault(row => row.Channels.First.ToString(CultureInfo.InvariantCulture) == first);
        return row is null ? "" : $", {row.Source}";
    }

    private static string Field(string field) => field switch
    {
        "from" => "who brings it, you or we?",
        "mic or DI" or "mic-or-di" => "which microphone or DI?",
        "with" => "wedge or in-ears, and which?",
        "place" => "where on the stage?",
        "port" => "which port?",
        _ => $"{field.Replace('-', ' ')}?",
    };
}
