using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Paper.Tree;
using Advance.Planning;

namespace Advance.Sheets.Drawings;

/// <summary>What is written beside things on a rigging plot.</summary>
/// <param name="speech">Of the paper.</param>
/// <param name="hasLoads">Whether trims and loads are written, or names alone.</param>
internal sealed class RiggingPlotWords(Speech speech, bool hasLoads)
{
    /// <summary>Name; length, trim and weight. A truss is long: its label finds a place last.</summary>
    public Label Of(TrussPlan truss) => Beside(-1, truss.Name, $"{speech.Say(truss.Placed.Truss.Length.Value)}, {LoadWords.Of("trim", truss.Placed.Trim, speech)}, {LoadWords.Of(truss.Weight, speech)}");

    /// <summary>Name; boxes, lowest edge and weight; and the points that stand on its picture.</summary>
    public Label Of(HangPlan hang, IReadOnlyList<(PointPlan Point, List<PickPlan> Under)> points)
    {
        var name = hasLoads || points.Count == 0 ? hang.Name : $"{hang.Name}, on {string.Join(", ", points.Select(one => one.Point.Point.Name))}";
        var lines = points.Select(one => $"on {one.Point.Point.Name}: {Carried(one.Point, one.Under)}");
        return Beside(1, name, [$"{hang.Boxes.Count} boxes, {LoadWords.Of("lowest edge", hang.Bottom, speech)}, {LoadWords.Of(hang.Weight, speech)}", .. lines]);
    }

    /// <summary>Name; what hangs straight under it, and all that it carries.</summary>
    public Label Of(PointPlan point, List<PickPlan> under) => new(Lines(point.Point.Name, Carried(point, under)));

    /// <summary>Name; what it hangs on and what that carries of it.</summary>
    public Label Of(PickPlan pick) => new(Lines(pick.Name, $"{(pick.Placed.Pick.Point.Is(out var name) ? $"on {name}, " : "")}{LoadWords.Of(pick.PointAtRest, speech)}"));

    private string Carried(PointPlan point, List<PickPlan> under) => string.Join(", ", [.. under.Select(pick => pick.Name), LoadWords.Of(point.AtRest, speech)]);

    private Label Beside(int rank, string name, params IReadOnlyList<string> more) => new(Lines(name, more)) { Rank = rank, MayStandInside = false };

    private IReadOnlyList<LabelLine> Lines(string name, params IReadOnlyList<string> more) =>
        [new LabelLine(name), .. hasLoads ? more.Select(line => new LabelLine(line, TextStyle.Quiet)) : []];
}
