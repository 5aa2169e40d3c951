using Advance.Domain.Figures;

namespace Advance.Planning;

/// <summary>Chooses ports for all lines, or all mixes, of a gig at once.</summary>
internal static class PortChoice
{
    /// <summary>The best port of each line, by its address; a line without a port is not in it.</summary>
    /// <param name="wishes">Rows of all acts, in any order; no two lines of one address.</param>
    /// <param name="field">The ports.</param>
    public static IReadOnlyDictionary<Address, Port> Of(IReadOnlyList<PortWish> wishes, PortField field)
    {
        var (ports, without) = Solve(wishes, field);
        while (without.Any(wish => wish.Count > 1))
        {
            // A row that finds no place side by side is better parted than not heard.
            wishes = [.. wishes.SelectMany(wish => without.Contains(wish) ? wish.Parted() : [wish])];
            var (better, still) = Solve(wishes, field);
            if (better.Count <= ports.Count)
            {
                break;
            }

            (ports, without) = (better, still);
        }

        return ports;
    }

    private static (Dictionary<Address, Port> Ports, HashSet<PortWish> Without) Solve(IReadOnlyList<PortWish> wishes, PortField field)
    {
        var (problem, chosen) = PortSearch.Solve(PortProblem.Of(wishes, field));
        var ports = new Dictionary<Address, Port>();
        foreach (var (unit, option) in problem.Units.Zip(chosen).Where(pair => pair.Second.HasPort))
        {
            foreach (var lines in unit.Wishes.Select(wish => wish.Lines))
            {
                for (var line = 0; line < lines.Count; line++)
                {
                    ports[lines[line].Address] = field[option.Start + line];
                }
            }
        }

        return (ports, [.. problem.Units.Zip(chosen).Where(pair => !pair.Second.HasPort).SelectMany(pair => pair.First.Wishes)]);
    }
}
