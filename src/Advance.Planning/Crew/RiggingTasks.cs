using Advance.Domain;
using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What there is to do before a truss hangs: points, bolts and slings, and when it is loaded, the way up.</summary>
/// <param name="brief">As written.</param>
internal sealed class RiggingTasks(Brief brief)
{
    // In metres: what the policy for bolting is for.
    private const int BoltedAtOnce = 12;

    private static readonly Address Root = Address.Of("crew") / "rigging";
    private static readonly string[] Riggers = ["rigger", "climber"];

    private TaskTimes Times => brief.Company.Policies.Tasks;

    // Somebody of the trade leads, where anybody of it is there.
    private string Skill => Riggers.FirstOrDefault(skill => brief.Gig.People.Any(person => person.Skills.Contains(skill, StringComparer.OrdinalIgnoreCase))) ?? "";

    /// <summary>The truss that a lighting position is at, by its name on its side; null for one that is at none.</summary>
    public string? TrussOf(string position) => brief.Gig.Lighting.Positions
        .Where(one => Mirrored.Each(one.Name, one.Sides).Any(side => string.Equals(side.Name, position, StringComparison.OrdinalIgnoreCase)))
        .Select(one => brief.Gig.Rigging.At(one.Place)?.Name)
        .FirstOrDefault();

    /// <summary>Points, then each truss bolted and slung.</summary>
    /// <param name="after">What must be done before.</param>
    /// <param name="add">Puts a task into the list.</param>
    /// <returns>By truss, what must be done before something is hung on it.</returns>
    public IReadOnlyDictionary<string, Address> Bolt(IReadOnlyList<Address> after, Func<TaskDraft, IReadOnlyList<Address>> add)
    {
        var trusses = brief.Gig.Rigging.Trusses;
        if (trusses.Count == 0)
        {
            return new Dictionary<string, Address>(StringComparer.OrdinalIgnoreCase);
        }

        var hung = add(Points(trusses, after));
        return trusses.ToDictionary(truss => truss.Name, truss => add(Bolted(truss, hung))[0], StringComparer.OrdinalIgnoreCase);
    }

    /// <summary>Each truss up to its trim, when all is on it.</summary>
    /// <param name="bolted">By truss, its task before.</param>
    /// <param name="carried">By truss, what is hung on it.</param>
    /// <param name="powered">What must be done before hoists have power.</param>
    /// <param name="add">Puts a task into the list.</param>
    public IReadOnlyList<Address> Fly(
        IReadOnlyDictionary<string, Address> bolted, IReadOnlyDictionary<string, List<Address>> carried, IReadOnlyList<Address> powered, Func<TaskDraft, IReadOnlyList<Address>> add) =>
        [.. brief.Gig.Rigging.Trusses.SelectMany(truss => add(Flown(truss, [bolted[truss.Name], .. carried.GetValueOrDefault(truss.Name) ?? [], .. powered])))];

    private TaskDraft Points(IReadOnlyList<HungTruss> trusses, IReadOnlyList<Address> after)
    {
        var names = trusses.SelectMany(truss => truss.Picks).Select(pick => pick.Point.Or("")).ToList();
        var bridles = names.Count(name => brief.Gig.Rigging.Bridles.Any(bridle => string.Equals(bridle.Name, name, StringComparison.OrdinalIgnoreCase)));
        var parts = new List<Figure<Duration>> { Labour.For(Figure.Count(names.Count - bridles), "point", Times.Point) };
        if (bridles > 0)
        {
            parts.Add(Labour.For(Figure.Count(bridles), "bridle", Times.Bridle));
        }

        return new TaskDraft(Root / "points", Job.Rigging, $"Hang {names.Count} points", "roof", Times.Point.Hands, Skill, Labour.Together(parts), after)
        {
            Danger = "What is dropped kills: nobody stands below, helmets on, tools tied.",
            Undo = $"Strike {names.Count} points",
        };
    }

    private TaskDraft Bolted(HungTruss truss, IReadOnlyList<Address> after)
    {
        var metres = new Figure<int>(truss.Length.Is(out var length) ? (int)Math.Ceiling(length.Meters) : null, Doubts.Of(truss.Length.Doubt), new Reason.Fixed(truss.At));
        return new TaskDraft(Root / truss.Name / "bolted", Job.Rigging, $"Bolt and sling {truss.Name}", "under its points", Times.Truss.Hands, Skill, Labour.ForPart(metres, BoltedAtOnce, "truss", Times.Truss), after)
        {
            Danger = "Every bolt and pin is seen by a second person before it leaves the floor.",
            Undo = $"Unbolt {truss.Name}",
        };
    }

    private TaskDraft Flown(HungTruss truss, IReadOnlyList<Address> after)
    {
        var work = Labour.Together([Labour.For(Figure.Count(1), "fly", Times.Fly), Labour.For(Figure.Count(truss.Picks.Count), "fly-point", Times.FlyPoint)]);
        return new TaskDraft(Root / truss.Name / "flown", Job.Rigging, $"Fly {truss.Name} to trim, level, secure", "under its points", Times.Fly.Hands, Skill, work, after)
        {
            Danger = "A load that moves can catch or fall: area clear, one voice, one hand on the stop.",
            Undo = $"Lower {truss.Name}",
        };
    }
}
