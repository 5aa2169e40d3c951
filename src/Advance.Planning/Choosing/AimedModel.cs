using Google.OrTools.Sat;

namespace Advance.Planning;

/// <summary>
/// An integer model with aims in order: the first outweighs all that follow. The same model gives the same answer on every run: one worker,
/// a fixed seed, and effort counted in steps of the solver, never in time.
/// </summary>
internal sealed class AimedModel
{
    // In the solver's own units; about a second on a small machine.
    private const double UsualEffort = 4;

    private readonly List<LinearExpr> aims = [];
    private readonly double effort;
    private readonly string manner;

    /// <summary>An empty model.</summary>
    /// <param name="effort">At most so much work on each aim, in deterministic seconds of the solver.</param>
    /// <param name="isAssignment">
    /// Whether it is mostly choices of one among many that exclude each other: then all of them are relaxed to a linear program, and nothing is tried
    /// out or looked through for mirror images before the search, which the program leaves so little to do that either takes longer.
    /// </param>
    public AimedModel(double effort = UsualEffort, bool isAssignment = false)
    {
        this.effort = effort;
        manner = isAssignment ? "linearization_level:2,cp_model_probing_level:0,symmetry_level:0" : "linearization_level:1";
    }

    /// <summary>Where variables and constraints are put.</summary>
    public CpModel Model { get; } = new();

    /// <summary>Adds an aim that matters less than those before it.</summary>
    public void Minimise(LinearExpr aim) => aims.Add(aim);

    /// <summary>Solves for one aim after the other; null where nothing satisfies the constraints, or no answer was found with that effort.</summary>
    public Answer? Solve()
    {
        Answer? best = null;
        var isProven = true;
        foreach (var aim in aims.DefaultIfEmpty(LinearExpr.Constant(0)))
        {
            Model.Minimize(aim);
            var solver = new CpSolver { StringParameters = FormattableString.Invariant($"num_workers:1,random_seed:1,max_deterministic_time:{effort},{manner}") };
            var status = solver.Solve(Model);
            if (status is not (CpSolverStatus.Optimal or CpSolverStatus.Feasible))
            {
                return best;
            }

            isProven &= status == CpSolverStatus.Optimal;
            best = new Answer(solver, isProven);
            Model.Add(aim <= best.Of(aim));
        }

        return best;
    }
}
