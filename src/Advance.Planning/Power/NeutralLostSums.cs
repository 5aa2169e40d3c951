using System.Numerics;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>
/// Works out what every leg gets if a neutral opens. The loads to neutral are then a star without its middle, which moves by
/// <c>Σ (Y · U) / Σ Y</c>; since each takes its current at the nominal voltage, that is the neutral current over the sum of the currents, each
/// turned back to its own leg. Fundamental only, constant impedance; an angle that nobody knows is taken as none.
/// </summary>
internal sealed class NeutralLostSums(NeutralSums neutrals)
{
    // What more of its voltage a unit need not stand.
    private const double Most = 1.1;

    private static readonly Figure<Angle> None = new(Angle.Zero, Doubts.None, Reason.Derived.It);

    /// <summary>Of a place with more than one leg; null where loads return through the neutral from one leg at most: they go out, and that is all.</summary>
    public NeutralLost? Of(PowerNode node)
    {
        var states = StateShares.States.Select(state => (State: state, Terms: TermsOf(node, state))).ToList();
        var worst = states.MaxBy(one => Highest(node, one.Terms));
        return worst.Terms.Where(term => term.Draw.Current.Value is not { Amperes: 0 }).DistinctBy(term => term.Line).Count() < 2
            ? null
            : new NeutralLost(worst.State, [.. LegsOf(node, worst.State, worst.Terms, states.SelectMany(one => one.Terms).Aggregate(Doubts.None, (sum, term) => sum.With(term.Draw.Current.RestsOn).With(term.Facts.RestsOn)))]);
    }

    private List<NeutralTerm> TermsOf(PowerNode node, ShowState state) => [.. neutrals.Terms(node, state, atMost: false).Where(term => term.Line is not null)];

    private static double Highest(PowerNode node, List<NeutralTerm> terms)
    {
        var (returns, all) = (Complex.Zero, Complex.Zero);
        foreach (var term in terms)
        {
            var own = Complex.FromPolarCoordinates(term.Facts.Spectrum.FundamentalOf(term.Amperes), -(term.Facts.Lag?.Value?.Radians ?? 0));
            (returns, all) = (returns + (own * node.Angles.ToNeutral(term.Line!.Value)), all + own);
        }

        return all == Complex.Zero ? 0 : terms.Select(term => Complex.Abs(node.Angles.ToNeutral(term.Line!.Value) - (returns / all))).Max();
    }

    private static IEnumerable<LostLeg> LegsOf(PowerNode node, ShowState state, List<NeutralTerm> terms, Doubts doubts)
    {
        var firsts = terms.ConvertAll(term => (Term: term, First: LegSum.Fundamental(term.Draw.Current, term.Facts.Harmonics), Lag: term.Facts.Lag ?? None));
        var returns = firsts.ConvertAll(one => NeutralWorking.Parts(one.Term.Draw.Name, one.First, node.Angles.Degrees[one.Term.Line!.Value], one.Lag));
        var own = firsts.ConvertAll(one => NeutralWorking.Parts(one.Term.Draw.Name, one.First, 0, one.Lag));
        var (p, q) = (Total("neutral along", returns.Select(one => one.Along)), Total("neutral across", returns.Select(one => one.Across)));
        var (g, b) = (Total("all currents, in phase", own.Select(one => one.Along)), Total("all currents, out of phase", own.Select(one => one.Across)));
        var along = Shift("along", "s = (p · g + q · b) / (g² + b²)", p, q, g, b, (x, y, r, i) => (x * r) + (y * i));
        var across = Shift("across", "s = (q · g - p · b) / (g² + b²)", p, q, g, b, (x, y, r, i) => (y * r) - (x * i));
        foreach (var (index, line) in node.Lines.Index())
        {
            var voltage = VoltageOf($"{node.Name} {node.Legs[index]}, voltage if the neutral opens, {StateShares.Word(state)}", node, line, along, across);
            var on = terms.Where(term => term.Line == line).Select(term => term.Draw.Load).OfType<PowerLoad>().Distinct(ReferenceEqualityComparer.Instance).Cast<PowerLoad>();
            yield return new LostLeg(node.Legs[index], voltage with { RestsOn = voltage.RestsOn.With(doubts) }, IsTooMuch(voltage, node) ? [.. on] : []);
        }
    }

    private static bool IsTooMuch(Figure<ElectricPotential> voltage, PowerNode node) =>
        voltage.Value is { } volts && node.Supply?.Voltages[0].Least is { } nominal && volts.Volts > Most * nominal.Volts;

    private static Figure<ElectricCurrent> Total(string name, IEnumerable<Figure<ElectricCurrent>> parts) =>
        Sum.Of(name, "I = Σ Iᵢ", CircuitTheory.Phasors).PutAll("Iᵢ", parts).Gives(terms => ElectricCurrent.FromAmperes(terms.Values.Sum(one => one.Amperes)));

    private static Figure<double> Shift(
        string name, string formula, Figure<ElectricCurrent> p, Figure<ElectricCurrent> q, Figure<ElectricCurrent> g, Figure<ElectricCurrent> b, Func<double, double, double, double, double> over) =>
        Sum.Of($"shift of the middle {name} the first leg, as a share of the voltage", formula, CircuitTheory.Phasors).Put("p", p).Put("q", q).Put("g", g).Put("b", b)
            .Gives((x, y, r, i) => over(x.Amperes, y.Amperes, r.Amperes, i.Amperes) / ((r.Amperes * r.Amperes) + (i.Amperes * i.Amperes)));

    private static Figure<ElectricPotential> VoltageOf(string name, PowerNode node, int line, Figure<double> along, Figure<double> across) =>
        Sum.Of(name, "U = u · √((cos(θ) - s)² + (sin(θ) - t)²)", CircuitTheory.Phasors)
            .Put("u", Nominal(node))
            .Put("θ", new Figure<Angle>(Angle.FromDegrees(node.Angles.Degrees[line]), Doubts.None, Reason.Derived.It))
            .Put("s", along)
            .Put("t", across)
            .Gives((volts, stands, x, y) => ElectricPotential.FromVolts(volts.Volts * Complex.Abs(new Complex(Math.Cos(stands.Radians) - x, Math.Sin(stands.Radians) - y))));

    private static Figure<ElectricPotential> Nominal(PowerNode node)
    {
        var service = node.Root.Service;
        return new Figure<ElectricPotential>(node.Supply?.Voltages[0].Least, Doubts.Of(service?.Supply.Doubt), new Reason.Fixed(service?.Supply.At ?? Domain.Facts.Mark.Nowhere));
    }
}
