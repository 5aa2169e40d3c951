using Advance.Planning;

namespace Advance.Sheets.Views;

/// <summary>The way that a technician walks before there is sound, in order; only what this gig has.</summary>
/// <param name="plan">The plan.</param>
internal sealed class DriveSteps(Plan plan)
{
    /// <summary>Each a sentence to tick.</summary>
    public IEnumerable<string> All()
    {
        var drive = plan.Drive;
        if (drive.Outputs.Count > 0)
        {
            yield return $"Processor on, every output muted: {Listed(drive.Outputs.Select(output => output.Port.ToString()))}.";
        }

        yield return "Desk, stage boxes and processors on first; loudspeakers and amplifiers last, one circuit after the other.";
        if (drive.Units.Any(unit => unit.HasPort || unit.Software.Length > 0))
        {
            yield return "Each unit found at its address, with the software expected; what was found is written down.";
        }

        if (drive.Outputs.Count > 0)
        {
            yield return "Matrix, filters, delays and limiters as on this sheet; the file saved under the name of the gig and this revision.";
            yield return $"Signal at low level up to the inputs: {Listed(drive.Outputs.SelectMany(output => output.From).Distinct().Select(port => port.ToString()))}.";
            yield return "One output opened at a time: signal, right boxes, polarity, level; muted again before the next.";
        }

        foreach (var step in Listening())
        {
            yield return step;
        }
    }

    private IEnumerable<string> Listening()
    {
        var stacks = plan.Sound.Piles;
        if (stacks.Any(stack => stack.Boxes.Any(box => box.IsSub) && stack.Boxes.Any(box => !box.IsSub)))
        {
            yield return "Subs and tops of each stack together: polarity and level heard around the crossover.";
        }

        if (plan.Drive.Timings.Values.Any(timing => timing.From.Length > 0))
        {
            yield return "Delays, which are start values: each set by ear or by measurement against the stack it is timed from.";
        }

        if (stacks.Count > 1)
        {
            yield return $"All together: {Listed(stacks.Select(stack => stack.Name))}; sides not swapped, levels even, no hum.";
        }
    }

    private static string Listed(IEnumerable<string> names) => string.Join(", ", names.Distinct(StringComparer.Ordinal));
}
