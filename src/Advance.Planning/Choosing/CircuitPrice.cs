using Google.OrTools.LinearSolver;

namespace Advance.Planning;

/// <summary>The prices of nodes in the linear program that spreads divisible loads over all ways.</summary>
internal static class CircuitPrice
{
    /// <summary>For each node what a unit more of its limit would be worth; null where the program has no answer.</summary>
    /// <param name="classes">What is to be carried; each has a way.</param>
    /// <param name="paths">The nodes on each way.</param>
    /// <param name="limits">Of each node; 0 where there is none.</param>
    /// <param name="others">What each node carries already.</param>
    /// <param name="state">In which state.</param>
    public static double[]? Of(IReadOnlyList<CircuitClass> classes, int[][] paths, int[] limits, Func<int, long> others, int state)
    {
        using var solver = Solver.CreateSolver("GLOP");
        var use = solver.MakeNumVar(0, double.PositiveInfinity, "use");
        var rows = new Constraint?[limits.Length];
        for (var node = 0; node < limits.Length; node++)
        {
            if (limits[node] > 0)
            {
                rows[node] = solver.MakeConstraint(others(node), double.PositiveInfinity, "node");
                rows[node]!.SetCoefficient(use, limits[node]);
            }
        }

        foreach (var one in classes)
        {
            var all = solver.MakeConstraint(one.Draws[state], one.Draws[state], "class");
            foreach (var way in one.Ways)
            {
                var flow = solver.MakeNumVar(0, double.PositiveInfinity, "flow");
                all.SetCoefficient(flow, 1);
                foreach (var node in paths[way])
                {
                    rows[node]!.SetCoefficient(flow, -1);
                }
            }
        }

        solver.Objective().SetCoefficient(use, 1);
        solver.Objective().SetMinimization();
        return solver.Solve() == Solver.ResultStatus.OPTIMAL ? [.. rows.Select(row => Math.Max(0, row?.DualValue() ?? 0))] : null;
    }
}
