using System.Globalization;
using Advance.Domain.Wording;
using Advance.Paper.Pictures;
using Advance.Planning;
using Advance.Sheets.Drawings;
using Advance.Sheets.Markup;

namespace Advance.Sheets;

/// <summary>The drawings that a template may name in a figure.</summary>
internal static class DrawingList
{
    /// <summary>All of them, drawn from this plan when they are asked for.</summary>
    public static IReadOnlyList<Drawing> Of(Plan plan) => [.. All(plan).Select(drawing => drawing with { Draw = told => InUnits(plan, drawing.Draw(told)) })];

    // A scale bar counts in what the paper speaks.
    private static Scene? InUnits(Plan plan, Scene? scene) =>
        scene is null ? null : scene with { BarUnit = plan.Brief.Company.Units == UnitSystem.Metric ? BarUnit.Metres : BarUnit.Feet };

    private static IReadOnlyList<Drawing> All(Plan plan) =>
    [
        new Drawing("way-in", [], _ => WayInDrawing.Draw(plan)),
        new Drawing("stage-plot", ["stage", "act"], told => Stage(plan, told)),
        new Drawing("rigging-plot", [], _ => RiggingPlotDrawing.Draw(plan)),
        new Drawing("point-plot", [], _ => RiggingPlotDrawing.Draw(plan, hasLoads: false)),
        new Drawing("truss-elevation", ["truss"], told => Truss(plan, told)),
        new Drawing("hang", ["hang"], told => plan.Rigging.Hangs.FirstOrDefault(hang => hang.Name == told.GetValueOrDefault("hang", "")) is { } hang ? HangDrawing.Draw(plan, hang) : null),
        new Drawing("system", ["stack"], told => System(plan, told)),
        new Drawing("feet", ["item"], told => Feet(plan, told)),
        new Drawing("signal-diagram", ["part"], told => Signal(plan, told)),
        new Drawing("one-line", ["first", "count", "room"], told => OneLine(plan, told)),
    ];

    private static Scene? Stage(Plan plan, IReadOnlyDictionary<string, string> told)
    {
        var stage = plan.Stage.Stages.FirstOrDefault(stage => stage.Name == told.GetValueOrDefault("stage", ""));
        var act = told.GetValueOrDefault("act", "");
        return stage is null ? null : StagePlotDrawing.Draw(plan, stage, act.Length > 0 ? act : null);
    }

    private static Scene? Truss(Plan plan, IReadOnlyDictionary<string, string> told)
    {
        var truss = plan.Rigging.Trusses.FirstOrDefault(truss => truss.Name == told.GetValueOrDefault("truss", ""));
        return truss is null ? null : TrussElevationDrawing.Draw(plan, truss);
    }

    private static Scene? System(Plan plan, IReadOnlyDictionary<string, string> told)
    {
        var stack = plan.Sound.Stacks.FirstOrDefault(stack => stack.Name == told.GetValueOrDefault("stack", ""));
        return stack is null ? null : SystemDrawing.Draw(stack, Speech.Of(plan.Brief.Company.Units));
    }

    private static Scene? Feet(Plan plan, IReadOnlyDictionary<string, string> told)
    {
        var item = plan.Standing.Items.FirstOrDefault(item => item.Name == told.GetValueOrDefault("item", ""));
        return item is null ? null : FeetDrawing.Draw(item, Speech.Of(plan.Brief.Company.Units));
    }

    private static Scene Signal(Plan plan, IReadOnlyDictionary<string, string> told) => told.GetValueOrDefault("part", "") switch
    {
        "to-desk" => SignalDrawing.Of(plan, SignalPart.ToDesk).Scene(),
        "from-desk" => SignalDrawing.Of(plan, SignalPart.FromDesk).Scene(),
        "loudspeakers" => SignalDrawing.Of(plan, SignalPart.Loudspeakers).Scene(),
        "heard" => SignalDrawing.Of(plan, SignalPart.Heard).Scene(),
        _ => SignalDrawing.Of(plan, SignalPart.Whole).Scene(),
    };

    private static Scene? OneLine(Plan plan, IReadOnlyDictionary<string, string> told) =>
        int.TryParse(told.GetValueOrDefault("first", ""), NumberStyles.None, CultureInfo.InvariantCulture, out var first)
        && int.TryParse(told.GetValueOrDefault("count", ""), NumberStyles.None, CultureInfo.InvariantCulture, out var count)
            ? OneLineDrawing.Draw(plan, told.GetValueOrDefault("room", "") == "large" ? OneLineRoom.Large : OneLineRoom.Small, first, count)
            : null;
}
