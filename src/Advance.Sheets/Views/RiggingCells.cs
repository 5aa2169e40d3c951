using System.Globalization;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Wording;
using Advance.Planning;
using UnitsNet;

namespace Advance.Sheets.Views;

/// <summary>What hangs, in the units that riggers and the venue's engineer use: kg and kN, or lb; kNm; millimetres, or inches, of chain.</summary>
internal sealed class RiggingCells(Plan plan, Cells cells)
{
    private static readonly Cell Cannot = new("?") { Verdict = Paper.Tree.Verdict.CannotBeJudged };

    private readonly Speech speech = Speech.Of(plan.Brief.Company.Units);

    /// <summary>Whether the paper speaks metric.</summary>
    public bool IsMetric => speech.Units == Domain.Wording.UnitSystem.Metric;

    /// <summary>Where x and y are measured from: the venue's datum; where nobody knows where that is, the middle of the downstage edge.</summary>
    public Spot Origin => plan.Stage.Datum ?? new Spot(0, 0);

    /// <summary>The unit of <see cref="Small(double)"/>.</summary>
    public string SmallUnit => IsMetric ? "mm" : "in";

    /// <summary>In whole kg or lb.</summary>
    public Cell Mass(Figure<Mass> figure) => cells.Amount(figure, In, 0);

    /// <summary>In whole kg or lb, hatched or marked by how it fared against its limit.</summary>
    public Cell Mass(Figure<Mass> figure, Verdict verdict) => Mass(figure) with { Verdict = Of(verdict) };

    /// <summary>What it weighs, in kN, by standard gravity.</summary>
    public Cell Weight(Figure<Mass> figure) => cells.Amount(figure, mass => Force.FromKilogramsForce(mass.Kilograms).Kilonewtons, 2) with { Address = null };

    /// <summary>The unit of <see cref="Moment"/>.</summary>
    public string MomentUnit => speech.Paper.Moment;

    /// <summary>The unit of <see cref="Shear"/>.</summary>
    public string ForceUnit => speech.Paper.Force;

    /// <summary>A moment, in its unit.</summary>
    public Cell Moment(Figure<Torque> figure) => cells.Amount(figure, speech.Paper.In, speech.Paper.ForceDecimals);

    /// <summary>A force, in its unit.</summary>
    public Cell Shear(Figure<Force> figure) => cells.Amount(figure, speech.Paper.In, speech.Paper.ForceDecimals);

    /// <summary>How fast a hoist runs, as riggers count it: <c>4 m/min</c>.</summary>
    public string PerMinute(Speed speed) => $"{Numbers.Plain(IsMetric ? speed.MetersPerMinutes : speed.FeetPerMinute, 1)} {(IsMetric ? "m" : "ft")}/min";

    /// <summary>A case in the units of the paper.</summary>
    public string Said(Words words) => speech.Say(words);

    /// <summary>How much of a limit is used, in per cent and never rounded down over it; fails where it is over it, hatched where nobody can judge.</summary>
    public static Cell Share<T>(Figure<T> figure, Figure<T> limit, Func<T, double> amount)
        where T : struct, IComparable<T>
    {
        var doubts = figure.RestsOn.With(limit.RestsOn);
        var cell = figure.Value is { } value && limit.Value is { } most && amount(most) > 0 ? Percent(amount(value) / amount(most)) with { Verdict = Of(figure.AtMost(limit)) } : Cannot;
        return cell with { Tbc = doubts.Any ? "" : null };
    }

    /// <summary>The same of masses.</summary>
    public static Cell Share(Figure<Mass> figure, Figure<Mass> limit) => Share(figure, limit, mass => mass.Kilograms);

    /// <summary>A share of 1, in per cent; over 1 it fails; hatched where nobody knows.</summary>
    public static Cell Share(double? share, Doubts doubts)
    {
        var cell = share is { } known ? Percent(known) with { Verdict = known > 1 + 1e-9 ? Paper.Tree.Verdict.Fails : Paper.Tree.Verdict.Plain } : Cannot;
        return cell with { Tbc = doubts.Any ? "" : null };
    }

    /// <summary>A length along a truss or above something, with its unit left to the head.</summary>
    public Cell Length(double? metres)
    {
        var amount = metres is { } known ? (IsMetric ? known : UnitsNet.Length.FromMeters(known).Feet) : (double?)null;
        return amount is { } said ? Cell.Number(said, Numbers.Plain(said, 2)) : Cannot;
    }

    /// <summary>What was written as a length, with its unit left to the head.</summary>
    public Cell Length(Given<Length>? given)
    {
        var cell = given is { } known && known.Is(out var length) ? Length(length.Meters) : Cannot;
        return cell with { Tbc = given?.Doubt is null ? null : "" };
    }

    /// <summary>How far a hook may move, rounded down, with its unit left to the head.</summary>
    public Cell Small(double metres)
    {
        var amount = IsMetric ? Math.Floor((metres * 1000) + 1e-6) : Math.Floor((UnitsNet.Length.FromMeters(metres).Inches * 10) + 1e-6) / 10;
        return Cell.Number(amount, Numbers.Plain(amount, 1));
    }

    /// <summary>How far a hook is reckoned off, or a truss sags, as the cases say it, with its unit left to the head.</summary>
    public Cell Off(double metres)
    {
        var amount = IsMetric ? metres * 1000 : UnitsNet.Length.FromMeters(metres).Inches;
        return Cell.Number(amount, Numbers.Plain(amount, 1));
    }

    /// <summary>A verdict on paper.</summary>
    public static Paper.Tree.Verdict Of(Verdict verdict) => verdict switch
    {
        Verdict.Fails => Paper.Tree.Verdict.Fails,
        Verdict.CannotBeJudged => Paper.Tree.Verdict.CannotBeJudged,
        _ => Paper.Tree.Verdict.Plain,
    };

    /// <summary>How a weight is known, in a word; blank for a sum of several.</summary>
    public static Cell How(Known? how) => how switch
    {
        Known.Weighed => Cell.Of("weighed"),
        Known.Maker => Cell.Of("maker"),
        Known.Estimated => Cell.Of("guess"),
        Known.Stated => Cell.Of("as told"),
        _ => Cell.Blank,
    };

    private double In(Mass mass) => IsMetric ? mass.Kilograms : mass.Pounds;

    private static Cell Percent(double share)
    {
        // What is over is never told as 100.
        var percent = Math.Max(share > 1 + 1e-9 ? 101 : 0, Numbers.Rounded(share * 100, 0));
        return Cell.Number(percent, percent.ToString("0", CultureInfo.InvariantCulture));
    }
}
