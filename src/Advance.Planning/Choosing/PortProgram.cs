using Google.OrTools.LinearSolver;

namespace Advance.Planning;

/// <summary>The choice of ports towards one aim as a linear program: a unit may be served by parts of several options.</summary>
internal sealed class PortProgram : IDisposable
{
    private readonly Solver solver = Solver.CreateSolver("GLOP");
    private readonly Dictionary<(string? Act, int Port), Constraint> ports = [];
    private readonly Dictionary<PortAim, Constraint> limited;
    private readonly bool isSolved;

    /// <summary>Solves it.</summary>
    /// <param name="problem">The units.</param>
    /// <param name="left">The options that may be chosen, by unit.</param>
    /// <param name="limits">What aims of more weight may cost at most; ports of shared sources, which are no sum over units, are left out.</param>
    /// <param name="aim">What is to cost least.</param>
    public PortProgram(PortProblem problem, IReadOnlyList<List<PortOption>> left, IReadOnlyDictionary<PortAim, long> limits, PortAim aim)
    {
        limited = limits.Where(limit => limit.Key != PortAim.Moved).OrderBy(limit => limit.Key).ToDictionary(limit => limit.Key, limit => AtMost(limit.Value));
        for (var unit = 0; unit < left.Count; unit++)
        {
            var one = solver.MakeConstraint(1, 1, "");
            foreach (var option in left[unit])
            {
                var taken = solver.MakeNumVar(0, double.PositiveInfinity, "");
                one.SetCoefficient(taken, 1);
                Weigh(taken, option, aim);
                Use(taken, problem.Uses(unit, option));
            }
        }

        solver.Objective().SetMinimization();
        isSolved = solver.Solve() == Solver.ResultStatus.OPTIMAL;
    }

    /// <summary>By how much one port more would change the least cost, by act and port; 0 where nothing was found.</summary>
    public IEnumerable<KeyValuePair<(string? Act, int Port), double>> Ports => ports.Select(port => KeyValuePair.Create(port.Key, Dual(port.Value)));

    /// <summary>By how much one more on a limit would change the least cost; 0 where nothing was found.</summary>
    public IEnumerable<KeyValuePair<PortAim, double>> Limits => limited.Select(limit => KeyValuePair.Create(limit.Key, Dual(limit.Value)));

    /// <summary>Lets go of the solver.</summary>
    public void Dispose() => solver.Dispose();

    private Constraint AtMost(long most) => solver.MakeConstraint(double.NegativeInfinity, most, "");

    private double Dual(Constraint constraint) => isSolved ? constraint.DualValue() : 0;

    private void Weigh(Variable taken, PortOption option, PortAim aim)
    {
        solver.Objective().SetCoefficient(taken, option.Cost(aim));
        foreach (var (key, limit) in limited)
        {
            if (option.Cost(key) is not 0 and var cost)
            {
                limit.SetCoefficient(taken, cost);
            }
        }
    }

    private void Use(Variable taken, IEnumerable<(string? Act, int Port)> uses)
    {
        foreach (var use in uses)
        {
            if (!ports.TryGetValue(use, out var port))
            {
                ports[use] = port = AtMost(1);
            }

            port.SetCoefficient(taken, 1);
        }
    }
}
