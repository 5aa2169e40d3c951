using Advance.Domain;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>Works out what is asked of generators.</summary>
internal sealed class GeneratorPlans(Brief brief, IReadOnlyList<SwitchOnStep> switchOn)
{
    // Below a quarter of its rating no set minds how its legs are shared. Common practice, no source.
    private const double Light = 0.25;
    private const int ThreeLegs = 3;

    /// <summary>Every generator that something of ours hangs on, in the order of the services.</summary>
    public IEnumerable<GeneratorPlan> Of(IEnumerable<ServicePower> powers) =>
        from power in powers
        where power.Service.Service?.Generator is not null && power.Service.Loads.Count + power.Service.Allowances.Count > 0
        select PlanOf(power, power.Service.Service!.Generator!);

    private GeneratorPlan PlanOf(ServicePower power, Generator set)
    {
        var (name, policies) = (power.Service.Name, brief.Company.Policies);
        var rating = Positive(Here($"{name}, rating here", "S = d / 100 · r", Figure.From(set.Rating), set, (value, part) => value * part));
        var engine = EngineOf(name, set, rating);
        var line = LineOf(power, rating);
        var hours = new GeneratorHours(power, set, engine, policies);
        var spells = hours.Spells(brief.Gig.ShowStates);
        return new GeneratorPlan(power, set)
        {
            Rating = rating,
            Engine = engine,
            Line = line,
            LineWithEase = Eased(name, line, Figure.Policy("generator-line", policies.GeneratorLine)),
            LineShare = Sum.Of($"{name}, worst line of its rated current", "u = 100 · I / Iᵣ", Publication.Arithmetic)
                .Put("I", power.Service.Worst.InUse).Put("Iᵣ", line).Gives((current, rated) => Ratio.FromPercent(100 * current.Amperes / rated.Amperes)),
            EngineShare = GeneratorHours.ShareOf($"{name}, real power of what the engine gives", power.Worst.Real, engine),
            Steps = [.. switchOn.Where(step => IsOn(step, power.Service)).Select(step => StepOf(step, power, rating))],
            MostStep = set.Step is { } step ? Figure.From(step) : null,
            Restart = OfRating($"{name}, all restarting at once", power.RestartLoad, rating),
            MostLeading = set.Leading is { } leading ? Figure.From(leading) : null,
            Uneven = UnevenOf(power, line),
            MostUneven = set.Unbalance is { } unbalance ? Figure.From(unbalance) : Figure.Policy("generator-unbalance", Ratio.FromPercent(policies.GeneratorUnbalance)),
            Spells = spells,
            Mean = spells.Count > 0 ? hours.Mean(spells) : null,
            Underloaded = spells.Count > 0 ? hours.Underloaded(spells) : null,
            Fuel = hours.Fuel(spells),
            Sustained = set.Sustained is { } sustained ? Figure.From(sustained) : SustainedOf(name, line),
        };
    }

    private static bool IsOn(SwitchOnStep step, SupplyPoint service) => step.Device.Upwards.Any(above => above.Address == service.Address);

    // Where nobody says what height and heat take off, the rating is taken as it stands.
    private static Figure<T> Here<T>(string name, string formula, Figure<T> rated, Generator set, Func<T, double, T> times)
        where T : struct, IComparable<T> => set.Derating is { } derating
        ? Sum.Of(name, formula, Iso8528.Rating).Put("d", LegSum.Percent(Figure.From(derating))).Put("r", rated).Gives((percent, value) => times(value, percent / 100))
        : rated;

    // Nothing rated, nothing to divide by.
    private static Figure<ElectricApparentPower> Positive(Figure<ElectricApparentPower> rating) => rating.Value is { } value && value.Voltamperes > 0 ? rating : new(null, rating.RestsOn, rating.Why);

    private static Figure<UnitsNet.Power> EngineOf(string name, Generator set, Figure<ElectricApparentPower> rating)
    {
        if (set.Engine is { } engine)
        {
            var here = Here($"{name}, engine here", "P = d / 100 · r", Figure.From(engine), set, (value, part) => UnitsNet.Power.FromWatts((double)value.Watts * part));
            return here.Value is { } value && value.Watts > 0 ? here : new(null, here.RestsOn, here.Why);
        }

        return Sum.Of($"{name}, engine, assumed since nobody says", "P = k · S", Iso8528.Rating)
            .Put("k", new Figure<double>(Generators.RatedPowerFactor, Doubts.None, Reason.Derived.It))
            .Put("S", rating)
            .Gives((factor, apparent) => Currents.Real(apparent, factor));
    }

    private static Figure<ElectricCurrent> LineOf(ServicePower power, Figure<ElectricApparentPower> rating)
    {
        var point = power.Service;
        var name = $"{point.Name}, rated current of a line";
        return point.Legs.Count == ThreeLegs && point.Supply?.BetweenLines is { } lines
            ? Sum.Of(name, "I = S / (√3 · U)", DoeHandbook.AcPower)
                .Put("S", rating)
                .Put("U", power.Voltage with { Value = lines })
                .Gives(Generators.ThreePhaseCurrent)
            : Sum.Of(name, "I = S / (n · U)", DoeHandbook.AcPower)
                .Put("S", rating)
                .Put("n", Figure.Count(point.Legs.Count))
                .Put("U", power.Voltage)
                .Gives((apparent, legs, volts) => Generators.SinglePhaseCurrent(apparent, volts) / legs);
    }

    private static Figure<ElectricCurrent> Eased(string name, Figure<ElectricCurrent> line, Figure<double> share) =>
        Sum.Of($"{name}, carried with ease by a line", "I = s / 100 · Iᵣ", Publication.CommonPractice).Put("s", share).Put("Iᵣ", line).Gives((percent, rated) => rated * (percent / 100));

    private static LoadStep StepOf(SwitchOnStep step, ServicePower power, Figure<ElectricApparentPower> rating)
    {
        var load = ServicePowers.Apparent($"{step.Device.Name}, switched on at once, in use", power.Voltage, step.Device.Legs.Select(leg => leg.InUse));
        return new LoadStep(step, load, OfRating($"{step.Device.Name}, step of load", load, rating));
    }

    private static Figure<Ratio> OfRating(string name, Figure<ElectricApparentPower> load, Figure<ElectricApparentPower> rating) =>
        Sum.Of($"{name}, of the rating", "s = 100 · ΔS / S", Iso8528.Rating)
            .Put("ΔS", load)
            .Put("S", rating)
            .Gives(Generators.Step);

    private static Figure<ElectricCurrent> SustainedOf(string name, Figure<ElectricCurrent> line) =>
        Sum.Of($"{name}, held into a short, assumed since nobody says", "I = k · Iᵣ", Iec60364.Generators)
            .Put("k", new Figure<double>(Generators.AssumedSustained, Doubts.None, Reason.Derived.It))
            .Put("Iᵣ", line)
            .Gives((times, rated) => Generators.Sustained(rated, times));

    private static StatePower? UnevenOf(ServicePower power, Figure<ElectricCurrent> line) => power.States
        .Where((state, index) => state.Unbalance?.Value is not null && line.Value is { } rated && power.Service.Legs.Max(leg => leg.InStates[index].Value?.Amperes ?? 0) >= Light * rated.Amperes)
        .MaxBy(state => state.Unbalance!.Value!.Value.Percent);
}
