using Advance.Sheets.Drawings;
using CsCheck;

namespace Advance.Tests.Sheets.Drawings;

/// <summary>A signal diagram can be read: nothing stands on anything else, and every connection is there.</summary>
public sealed class SignalLayersTests
{
    private const int MostNodes = 9;

    private static readonly Gen<List<SignalEdge>> Edges =
        Gen.Select(Gen.Int[0, MostNodes - 1], Gen.Int[0, MostNodes - 1], Gen.Int[0, 3]).List[1, 20].Select(drawn =>
            drawn.Where(one => one.Item1 != one.Item2).DistinctBy(one => (one.Item1, one.Item2))
                .Select(one => new SignalEdge(Name(one.Item1), Name(one.Item2), [.. Enumerable.Range(0, one.Item3).Select(line => $"lead {line}")]))
                .ToList());

    [Fact]
    public void Nodes_of_a_layer_stand_apart() => Edges.Sample(edges =>
    {
        foreach (var layer in Set(edges).Layers)
        {
            foreach (var (upper, lower) in layer.Zip(layer.Skip(1)))
            {
                Assert.True(upper.Top + upper.Height < lower.Top);
            }
        }
    });

    [Fact]
    public void Labels_that_stand_over_each_other_do_not_meet() => Edges.Sample(edges =>
    {
        foreach (var arriving in Set(edges).Steps.GroupBy(step => step.To.Layer))
        {
            var sorted = arriving.OrderBy(step => step.EndY).ToList();
            foreach (var (upper, lower) in sorted.Zip(sorted.Skip(1)))
            {
                Assert.True(upper.EndY < lower.EndY - (lower.Label.Count * SignalText.Leading));
            }
        }
    });

    [Fact]
    public void Upright_parts_between_two_layers_have_a_lane_each() => Edges.Sample(edges =>
    {
        foreach (var between in Set(edges).Steps.Where(step => step.Lane >= 0).GroupBy(step => step.From.Layer))
        {
            Assert.Equal(between.Count(), between.Select(step => step.Lane).Distinct().Count());
        }
    });

    [Fact]
    public void All_but_what_goes_round_in_a_circle_runs_from_left_to_right() => Edges.Sample(edges =>
    {
        var set = Set(edges);
        Assert.All(set.Steps, step => Assert.Equal(step.From.Layer + 1, step.To.Layer));
        var forward = edges.Where(edge => string.CompareOrdinal(edge.From, edge.To) < 0).ToList();
        Assert.Equal(forward.Count, Set(forward).Steps.Count(step => step.To.Node is not null));
    });

    private static SignalLayers Set(IReadOnlyList<SignalEdge> edges) =>
        SignalLayers.Of([.. Enumerable.Range(0, MostNodes).Select(number => new SignalNode(Name(number), Name(number), ["one line"]))], edges);

    private static string Name(int number) => $"unit {number}";
}
