using System.Text;
using Advance.Domain.Facts;
using Advance.Domain.Wording;
using Advance.Planning;

namespace Advance.Golden;

/// <summary>A plan as text, a line a thing, for comparing.</summary>
internal static class PlanText
{
    public static string Of(Plan plan)
    {
        var text = new StringBuilder();
        foreach (var piece in plan.Pieces)
        {
            text.Append($"piece {piece.Address}: {piece.Item}, {Owner(piece.From)}{Spot(piece.Spot)}{Doubtful(Doubts.Of(piece.From.Doubt))}\n");
        }

        foreach (var link in plan.Links)
        {
            text.Append($"link {link.From.Port} -> {link.To.Port} ({link.Carries})\n");
        }

        foreach (var thing in plan.Stage.Things.Concat(plan.Sound.Things).Concat(plan.Power.Things).Concat(plan.Lighting.Things))
        {
            text.Append($"drawn {thing.Address}: {thing.Look}{Spot(thing.Spot)} turned {thing.Turn}\n");
        }

        foreach (var line in plan.Stock.Lines)
        {
            text.Append(
                $"stock {line.Item}: need {line.Need.Value}, spare {line.Spare.Value}, total {line.Total.Value}, ready {line.Ready.Value}, short {line.Short.Value}{Doubtful(line.Total.RestsOn)}\n");
        }

        foreach (var (address, choice) in plan.Chosen.InOrder)
        {
            text.Append($"chosen {address}: {choice}\n");
        }

        foreach (var stated in plan.Figures.Where(stated => !stated.Address.Text.StartsWith("stock/", StringComparison.Ordinal)))
        {
            text.Append($"figure {stated.Address}: {Said(stated.Value)}{Doubtful(stated.RestsOn)}\n");
        }

        return text.ToString();
    }

    private static string Said(object? value) => value is null ? "unknown" : Speech.Metric.Say(value);

    private static string Owner(Given<Owner> from) => from.Is(out var owner) ? owner.Kind.ToString() : "unknown";

    private static string Spot(Spot? spot) => spot is { } at ? $" at {at.X:0.00} {at.Y:0.00}" : "";

    private static string Doubtful(Doubts doubts) => doubts.Any ? $" TBC {string.Join("; ", doubts.Select(doubt => doubt.Subject))}" : "";
}
