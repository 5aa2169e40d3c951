using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>How a stack or a hang is crossed and delayed.</summary>
internal sealed class SoundFacts(Plan plan, Speech speech, Cells cells)
{
    /// <summary>As pairs; none where nothing is.</summary>
    public IEnumerable<PairView> Of(StackPlan stack)
    {
        if (stack.Stack.Crossover is { } crossover)
        {
            yield return new PairView("Crossed", crossover.Is(out var known)
                ? Cell.Of($"{speech.Say(known.Frequency)} in {known.Within}") with { Tbc = crossover.Doubt is { } doubt ? cells.Note(doubt) : null }
                : cells.Of(crossover));
        }

        if (plan.Drive.Timings.TryGetValue(stack.Address, out var timing) && timing.From.Length > 0)
        {
            var delay = cells.WithUnit(timing.Delay);
            yield return new PairView("Delay", delay with { Text = $"{delay.Text} from {timing.From}, start value" });
        }
    }
}
