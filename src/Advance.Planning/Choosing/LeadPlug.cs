using System.Globalization;

namespace Advance.Planning;

/// <summary>The end of a lead, or the socket that it goes into, as the stock writes it: <c>xlr-3 male</c>, <c>16 A blue</c>, <c>12 x xlr-3 male</c>.</summary>
/// <param name="Count">How many connectors there are at that end, at least 1.</param>
/// <param name="Family">What fits into each other, but for its sex: <c>xlr-3</c>.</param>
/// <param name="Sex">Which half.</param>
internal readonly record struct LeadPlug(int Count, string Family, LeadPlugSex Sex)
{
    /// <summary>Reads an end. What is written in some other way is a family of its own.</summary>
    public static LeadPlug Read(string text)
    {
        var words = text.Split(' ', StringSplitOptions.RemoveEmptyEntries);
        var sex = words.LastOrDefault() switch
        {
            "male" => LeadPlugSex.Male,
            "female" => LeadPlugSex.Female,
            _ => LeadPlugSex.None,
        };
        var count = 1;
        var isCounted = words.Length > 2 && words[1] == "x" && int.TryParse(words[0], NumberStyles.None, CultureInfo.InvariantCulture, out count) && count > 0;
        var first = isCounted ? 2 : 0;
        var last = words.Length - (sex == LeadPlugSex.None ? 0 : 1);
        return new(isCounted ? count : 1, string.Join(' ', words[first..Math.Max(first, last)]), sex);
    }

    /// <summary>Whether two leads can be plugged into each other.</summary>
    public bool Joins(LeadPlug other) =>
        Count == other.Count && Family == other.Family && ((Sex, other.Sex) is (LeadPlugSex.Male, LeadPlugSex.Female) or (LeadPlugSex.Female, LeadPlugSex.Male));

    /// <summary>Whether the end of a lead goes into a socket that wants this sex; an end without a sex goes into all of its family.</summary>
    public bool FitsInto(LeadPlug socket, LeadPlugSex wanted) =>
        Count == socket.Count && Family == socket.Family && (Sex == LeadPlugSex.None || Sex == wanted);
}
