using Advance.Domain.Figures;
using Advance.Domain.Findings;

namespace Advance.Planning;

/// <summary>
/// Something that is checked. A rule is one small file: what it is called, how much it weighs, what it catches, why and what cures it, how
/// it judges and how it says so. Rules are discovered; a new file is enough.
/// </summary>
public abstract class Rule
{
    /// <summary>Its name: the family, which is also its folder, and the fault, which is also its file: <c>stock/too-few</c>.</summary>
    public abstract string Name { get; }

    /// <summary>How much it weighs when it fails.</summary>
    public abstract Severity Severity { get; }

    /// <summary>Whether life or a fuse hangs on it: then what cannot be judged is a stop.</summary>
    public virtual bool LifeOrFuse => false;

    /// <summary>Whether it looks at what the other rules found; then it comes after them.</summary>
    public virtual bool IsAboutFindings => false;

    /// <summary>What it catches.</summary>
    public abstract string Catches { get; }

    /// <summary>Why that matters.</summary>
    public abstract string Why { get; }

    /// <summary>What cures it.</summary>
    public abstract string Cures { get; }

    /// <summary>Where the limit comes from.</summary>
    public abstract Publication Source { get; }

    /// <summary>Judges everything it can find in the plan, also what holds.</summary>
    public abstract IReadOnlyList<Judged> Judge(Plan plan);
}

/// <summary>A rule with judgements of its own kind.</summary>
/// <typeparam name="TCase">What it found out about one thing.</typeparam>
public abstract class Rule<TCase> : Rule
    where TCase : Judgement
{
    /// <inheritdoc/>
    public sealed override IReadOnlyList<Judged> Judge(Plan plan) =>
        [.. Cases(plan).Select(found => new Judged(found, found.Verdict == Verdict.Holds ? null : FindingOf(found)))];

    /// <summary>Looks at everything the rule is about.</summary>
    protected abstract IEnumerable<TCase> Cases(Plan plan);

    /// <summary>Says what is wrong with a case that failed, or cannot be judged.</summary>
    protected abstract Said Say(TCase found);

    private Finding FindingOf(TCase found)
    {
        var said = Say(found);
        var severity = found.Verdict == Verdict.Fails ? Severity : LifeOrFuse ? Severity.Stop : Severity.Concern;
        return new Finding(Name, severity, found.At, said.Says, said.Cure)
        {
            Where = found.Where,
            Why = Why,
            Figures = said.Figures,
            CannotBeJudged = found.Verdict == Verdict.CannotBeJudged,
            RestsOn = found.RestsOn,
        };
    }
}
