using Advance.Domain.Figures;
using Advance.Domain.Findings;
using UnitsNet;

namespace Advance.Planning;

/// <summary><c>rigging/hang-near-table</c></summary>
internal sealed class HangNearTable : Rule<HangNearTable.Case>
{
    public override string Name => "rigging/hang-near-table";

    public override Severity Severity => Severity.Concern;

    public override string Catches => "The frame of a hang is tilted nearly as far as the table of its maker lets it.";

    public override string Why => "A hook a hand higher, or one hole off, and it is beyond it.";

    public override string Cures => "Less tilt, or more splay in the boxes, or measure the tilt at trim.";

    public override Publication Source => Publication.CommonPractice;

    protected override IEnumerable<Case> Cases(Plan plan)
    {
        var least = Figure.Policy("near-table", plan.Brief.Company.Policies.Rigging.NearTable);
        return
            from hang in plan.Rigging.Hangs
            where hang.State is not null && hang.Tilt.Value is not null && hang.Stack.Frame?.Piece.Kind?.FlyingFrame is not null
            from kind in hang.Boxes.Select(box => box.Box.Piece.Item).Distinct(StringComparer.Ordinal)
            where HangOverTable.Covering(hang, kind).Any()
            select new Case(hang, kind, LeftOf(hang, kind), least);
    }

    protected override Said Say(Case found) => new(
        $"{found.Hang.Stack.Stack.Name}: its frame is {TiltWords.Of(found.Hang.Tilt.Value)}, {found.Left.Value!.Value} from what its maker's table lets {found.Hang.Boxes.Count} boxes be tilted.",
        "Less tilt, or more splay in the boxes, or measure the tilt at trim.",
        $"{TiltWords.Of(found.Hang.Tilt.Value)}, {found.Hang.Boxes.Count} boxes");

    private static Figure<Angle> LeftOf(HangPlan hang, string kind)
    {
        var tilt = hang.Tilt.Value!.Value;
        var left = HangOverTable.Covering(hang, kind).Max(row => Math.Min(tilt.Degrees - row.From.Degrees, row.To.Degrees - tilt.Degrees));
        return new Figure<Angle>(Angle.FromDegrees(Math.Max(0, left)), hang.Tilt.RestsOn, Reason.Derived.It);
    }

    internal sealed record Case(HangPlan Hang, string Kind, Figure<Angle> Left, Figure<Angle> Least)
        : Judgement(Hang.Written / "near-table" / Kind, Hang.Placed.Hang.At, Left.AtLeast(Least), Hang.Tilt.RestsOn);
}
