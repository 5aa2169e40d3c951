using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Findings;
using Advance.Domain.Wording;

namespace Advance.Planning;

/// <summary><c>stage/place-unknown</c></summary>
internal sealed class PlaceUnknown : Rule<PlaceUnknown.Case>
{
    public override string Name => "stage/place-unknown";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "A place is said by the name of a thing, and nothing has that name, or that thing stands at the first one.";

    public override string Why => "What stands nowhere is on no plot, and no lead is cut to it.";

    public override string Cures => "Write the name as the thing has it, or say the place in metres.";

    public override Publication Source => Publication.Arithmetic;

    protected override IEnumerable<Case> Cases(Plan plan) => plan.Stage.Places.Select(place => new Case(place));

    protected override Said Say(Case found)
    {
        var place = found.Place;
        return place.IsKnown
            ? new(
                $"{string.Join(", ", place.Circle)}: each stands at another of them, and so all of them nowhere.",
                "Say one of the places in metres.",
                $"{string.Join(", ", place.Circle)}, in a circle")
            : new(
                $"{place.Name}: {Users(place.Users)} stands there, and nothing is called that.",
                Cure(place),
                $"{place.Name}, unknown");
    }

    private static string Users(IReadOnlyList<string> users) => users.Count switch
    {
        1 => users[0],
        2 => $"{users[0]} with one other",
        _ => $"{users[0]} with {users.Count - 1} others",
    };

    private static Words Cure(NamedPlace place) => place.Nearest is { } nearest
        ? $"Write {nearest} if that is meant, or place a thing called {place.Name}."
        : $"Place a thing called {place.Name}, or say the place in metres.";

    // A circle is one mistake: the first of its names speaks for all.
    private static Verdict Judge(NamedPlace place) =>
        !place.IsKnown || (place.Circle.Count > 0 && place.Circle.Min(StringComparer.OrdinalIgnoreCase) == place.Circle[0]) ? Verdict.Fails : Verdict.Holds;

    internal sealed record Case(NamedPlace Place) : Judgement(Place.Address, Place.At, Judge(Place), Doubts.None);
}
