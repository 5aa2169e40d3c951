using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Times fills and delay stacks against the stack before them.</summary>
/// <param name="stacks">All of them.</param>
/// <param name="speed">Of sound.</param>
/// <param name="policies">By how much later than its way alone asks for a stack starts.</param>
internal sealed class Timings(IReadOnlyList<StackPlan> stacks, Figure<Speed> speed, Policies policies)
{
    private static readonly Timing First = new(new Figure<Duration>(Duration.Zero, Doubts.None, Reason.Derived.It), "");

    /// <summary>The timing of a stack: as fixed by hand, else from its way, else none.</summary>
    public Timing Of(StackPlan stack)
    {
        if (stack.Stack.Delay is { } given)
        {
            return new Timing(Figure.From(given), "fixed by hand");
        }

        return (stack.Stack.DelayOf, stack.Stack.FillOf) switch
        {
            ({ } before, _) => After(stack, before, "delay-offset", policies.DelayOffset),
            (_, { } before) => After(stack, before, "fill-offset", policies.FillOffset),
            _ => First,
        };
    }

    /// <summary>The stack that another is timed from: of its own side, else the nearest, else the first; null where none has that name.</summary>
    public StackPlan? Before(StackPlan stack, Given<string> name)
    {
        var named = name.Is(out var known) ? stacks.Where(other => other.Stack.Name == known || other.Name == known).ToList() : [];
        return named.Find(other => other.Side is not null && other.Side == stack.Side) ?? named.MinBy(other => Apart(other.Spot, stack.Spot));
    }

    // Arrival: the stack before is further from where both are heard, by so much longer is its sound on the way.
    private Timing After(StackPlan stack, Given<string> name, string policy, Duration offset)
    {
        var before = Before(stack, name);
        var doubts = stack.RestsOn.With(Doubts.Of(name.Doubt)).With(Doubts.Of(stack.Stack.HeardAt?.Doubt)).With(before?.RestsOn ?? Doubts.None);
        var delay = Sum.Of("delay", "t = max(0, (s₁ - s₂) / c + o)", Acoustics.Travel)
            .Put("s₁", SoundTravel.Way("way from the stack before", before, stack.HeardAt, doubts))
            .Put("s₂", SoundTravel.Way("own way", stack, stack.HeardAt, doubts))
            .Put("c", speed)
            .Put("o", Figure.Policy(policy, offset))
            .Gives((far, near, c, more) => Duration.FromSeconds(Math.Max(0, (Delays.Between(far, near, c) + more).Seconds)));
        return new Timing(delay, before?.Name ?? name.Or("TBC"));
    }

    private static double Apart(Spot? a, Spot? b) => a is { } one && b is { } other ? Math.Pow(one.X - other.X, 2) + Math.Pow(one.Y - other.Y, 2) : 0;
}
