using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Planning;
using UnitsNet;
using Verdict = Advance.Paper.Tree.Verdict;

namespace Advance.Sheets.Views;

/// <summary>Says what is known of a generator and what is asked of it, in pairs.</summary>
internal sealed class GeneratorFacts(GeneratorPlan plan, Cells cells)
{
    private static readonly Cell NotTold = new("not told") { Verdict = Verdict.CannotBeJudged };

    /// <summary>What its hirer has told.</summary>
    public IEnumerable<PairView> Set()
    {
        var set = plan.Set;
        yield return new PairView("Where", Told(plan.Service.Service!.Place));
        yield return new PairView("Rating", Told<ElectricApparentPower>(set.Rating));
        yield return new PairView("Left of it here", set.Derating is { } derating ? Told<Ratio>(derating) : Cell.Of("all of it, nobody says less"));
        yield return new PairView("Engine here", cells.WithUnit(plan.Engine) is var engine && plan.IsEngineAssumed ? engine with { Text = $"{engine.Text}, assumed" } : engine);
        yield return new PairView("Rated line current", cells.WithUnit(plan.Line) with { Strong = true });
        yield return new PairView("Largest step", plan.MostStep is { } step ? cells.WithUnit(step) : NotTold);
        yield return new PairView("Leading load borne", plan.MostLeading is { } leading ? Kilovars(leading) : NotTold);
        yield return new PairView("Holds into a short", cells.WithUnit(plan.Sustained) is var held && plan.IsSustainedAssumed ? held with { Text = $"{held.Text}, assumed" } : held);
        yield return new PairView("Noise at 7 m", set.Noise is { } noise ? Told<Level>(noise) : NotTold);
        yield return new PairView("If it stops", set.SecondSet is { } second ? Told(second) : NotTold);
    }

    /// <summary>Earth, link, electrode, residual devices, who isolates.</summary>
    public IEnumerable<PairView> Earth()
    {
        var service = plan.Service.Service!;
        yield return new PairView("Earthing", Told(service.Earthing));
        yield return new PairView("Neutral to earth", service.NeutralEarthLink is { } link ? Told(link) : NotTold);
        yield return new PairView("Electrode", service.Electrode is { } electrode ? Told<ElectricResistance>(electrode) : NotTold);
        yield return new PairView("Main device", service.Device is { } device ? Told(device) : Told<ElectricCurrent>(service.Rating));
        yield return new PairView("Residual device", Residual(service));
        yield return new PairView("Switched off by", service.IsolatedBy is { } isolated ? Told(isolated) : NotTold);
    }

    /// <summary>What is asked of it.</summary>
    public IEnumerable<PairView> Asked()
    {
        var power = plan.Power;
        yield return new PairView("Real power, worst", In(cells.WithUnit(power.Worst.Real), power.Worst) with { Strong = true });
        yield return new PairView("Of the engine", cells.WithUnit(plan.EngineShare));
        yield return new PairView("Apparent power, worst", In(cells.WithUnit(power.MostApparent.Apparent), power.MostApparent));
        yield return new PairView("Power factor then", cells.Amount(power.Worst.Factor, factor => factor, 2));
        yield return new PairView("Worst line, of rated", cells.WithUnit(plan.LineShare) with { Strong = true });
        yield return new PairView("Leading", Kilovars(power.MostLeading.Leading));
        if (plan.Uneven is { } uneven)
        {
            yield return new PairView("Unbalance", In(Of(uneven.Unbalance!, plan.MostUneven), uneven));
        }

        yield return new PairView("All at once after a blip", plan.MostStep is { } most ? Of(plan.Restart, most) : cells.WithUnit(plan.Restart));
        if (plan.Mean is { } mean)
        {
            yield return new PairView("Mean over its hours", cells.WithUnit(mean));
        }

        if (plan.Underloaded is { } hours)
        {
            yield return new PairView("Hours at little load", cells.Amount(hours, time => time.Hours, 1) is var cell && hours.Value is null ? cell : cell with { Text = $"{cell.Text} h" });
        }
    }

    /// <summary>Fuel of all hours together; nothing where nobody has told what it burns.</summary>
    public IEnumerable<PairView> Fuel()
    {
        yield return new PairView("Tank", plan.Set.Tank is { } tank ? Litres(Figure.From(tank)) : NotTold);
        if (plan.Fuel is not { } fuel)
        {
            yield break;
        }

        yield return new PairView("Fuel to have, with margin", Litres(fuel.Needed) with { Strong = true });
        if (plan.Set.Tank is { IsKnown: true } known)
        {
            var doubts = fuel.DryAt?.RestsOn ?? fuel.Needed.RestsOn.With(Doubts.Of(known.Doubt));
            yield return new PairView("A full tank lasts", Cell.Of(fuel.Needed.Value is null ? "not known" : fuel.Dry is { } moment ? $"until {moment}" : "all these hours") with { Tbc = cells.NoteOf(doubts) });
            yield return new PairView("Refuel", Cell.Of(Refuel(fuel)) with { Tbc = cells.NoteOf(doubts) });
        }
    }

    private static string Refuel(GeneratorFuel fuel) => fuel switch
    {
        { DryAt: null } => "not during these hours; stopped and cold, by its hirer",
        { RefuelIn: { } spell } => $"in {spell.Power.StateInWords}, {spell.When.From} to {spell.When.To}",
        _ => "before the first of these hours",
    };

    private Cell Residual(Domain.Venues.Service service)
    {
        var amperes = service.ResidualProtection.Is(out var trips) ? Cell.Of($"{Cells.Amount(trips.Milliamperes, 0).Text} mA") : NotTold;
        var type = service.ResidualType is { IsKnown: true } known ? $", type {known.Value}" : "";
        var delay = service.ResidualDelay is { IsKnown: true } waits ? $", {Cells.Amount(waits.Value.Milliseconds, 0).Text} ms" : "";
        return amperes with { Text = amperes.Text + type + delay, Tbc = cells.Of(service.ResidualProtection).Tbc };
    }

    private Cell Of(Figure<Ratio> share, Figure<Ratio> most)
    {
        var cell = cells.WithUnit(share);
        return cell with { Text = $"{cell.Text} of {cells.WithUnit(most).Text}", Verdict = share.AtMost(most) == Domain.Figures.Verdict.Fails ? Verdict.Fails : cell.Verdict };
    }

    private static Cell In(Cell cell, StatePower state) => cell with { Text = $"{cell.Text}, {state.StateInWords}" };

    private Cell Kilovars(Figure<ElectricApparentPower> figure)
    {
        var cell = cells.Amount(figure, value => (double)value.Kilovoltamperes, 1);
        return figure.Value is not { } leads ? cell : leads.Voltamperes == 0 ? cell with { Text = "none that anybody knows of", Address = null } : cell with { Text = $"{cell.Text} kvar" };
    }

    private Cell Litres(Figure<Volume> figure) => cells.Amount(figure, cells.Units.FuelIn, 0) is var cell && figure.Value is null ? cell : cell with { Text = $"{cell.Text} {cells.Units.Fuel}" };

    // What is asked and not answered is hatched.
    private Cell Told<T>(Given<T> given)
        where T : notnull => cells.Of(given) is var cell && cell.Text.Length == 0 ? cell with { Text = "not told", Verdict = Verdict.CannotBeJudged } : cell;
}
