using Advance.Domain.Companies;
using Advance.Domain.Facts;
using Advance.Domain.Figures;
using Advance.Domain.Gigs;
using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Planning;

/// <summary>What a generator does over its hours: the times that a gig gives for its show states.</summary>
internal sealed class GeneratorHours(ServicePower power, Generator set, Figure<UnitsNet.Power> engine, Policies policies)
{
    private const double LeastPercent = 100 * Generators.LeastCounted;

    private readonly FuelCurve? curve = set.Fuel.Count == 0 ? null : new FuelCurve(set.Fuel.DistinctBy(row => row.Load.Percent).Select(row => (row.Load, VolumeFlow.FromCubicMetersPerHour(row.AnHour.CubicMeters))));

    /// <summary>Every time whose state has one, in the order of the day.</summary>
    public IReadOnlyList<GeneratorSpell> Spells(IReadOnlyList<ShowStateRow> times) =>
        [.. times.Where(row => row.Time.IsKnown).OrderBy(row => row.Time.Value.From).ThenBy(row => row.Time.Value.To).Select(SpellOf)];

    /// <summary>Real power as a share of what the engine gives.</summary>
    public static Figure<Ratio> ShareOf(string name, Figure<UnitsNet.Power> real, Figure<UnitsNet.Power> engine) =>
        Sum.Of(name, "u = 100 · P / Pₑ", Publication.Arithmetic)
            .Put("P", real)
            .Put("Pₑ", engine)
            .Gives((given, most) => Ratio.FromPercent(100 * (double)given.Watts / (double)most.Watts));

    /// <summary>Mean load over the hours, where little counts as 30 %.</summary>
    public Figure<Ratio> Mean(IReadOnlyList<GeneratorSpell> spells) =>
        Sum.Of($"{power.Service.Name}, mean load over its hours", "m = Σ sᵢ · tᵢ / Σ tᵢ", Iso8528.Mean)
            .PutAll("sᵢ", spells.Select(Counted))
            .PutAll("tᵢ", spells.Select(spell => spell.Time))
            .Gives((shares, times) => Generators.MeanLoad([.. shares.Values.Zip(times.Values, (share, time) => (Ratio.FromPercent(share), time))]));

    /// <summary>Hours at little load, counting our own loads alone; unknown where one of the loads is.</summary>
    public Figure<Duration> Underloaded(IReadOnlyList<GeneratorSpell> spells)
    {
        var hours = Sum.Of($"{power.Service.Name}, time at little load", "t = Σ tᵢ", Publication.Arithmetic)
            .PutAll("tᵢ", spells.Where(spell => spell.SureShare.Value is not { } share || share.Percent < policies.GeneratorLeast).Select(spell => spell.SureShare.Value is null ? spell.Time with { Value = null } : spell.Time))
            .Gives(times => Duration.FromSeconds(times.Values.Sum(time => time.Seconds)));

        // Which hours count hangs on all of the loads.
        return hours with { RestsOn = spells.Aggregate(hours.RestsOn, (sum, spell) => sum.With(spell.SureShare.RestsOn)) };
    }

    /// <summary>What all hours burn, and how long a tank lasts; null where nobody gave what it burns.</summary>
    public GeneratorFuel? Fuel(IReadOnlyList<GeneratorSpell> spells)
    {
        if (curve is null || spells.Count == 0)
        {
            return null;
        }

        var margin = Figure.Policy("generator-fuel", policies.GeneratorFuel);
        var needed = Sum.Of($"{power.Service.Name}, fuel with margin", "V = m / 100 · Σ vᵢ", Publication.CommonPractice)
            .Put("m", margin)
            .PutAll("vᵢ", spells.Select(spell => spell.Burnt))
            .Gives((percent, parts) => Total(parts) * (percent / 100));
        var index = set.Tank is { } tank && needed.Value is not null ? DryIn(spells, Figure.From(tank)) : -1;
        return index < 0
            ? new GeneratorFuel(needed, null, null)
            : new GeneratorFuel(needed, DryAt(spells, index, margin), spells.Take(index + 1).LastOrDefault(spell => spell.Power.State is not (ShowState.Show or ShowState.SoundCheck)));
    }

    private GeneratorSpell SpellOf(ShowStateRow row)
    {
        var state = power.States.First(one => one.State == row.State);
        var time = Figure.From(row.Time.Select(range => Duration.FromMinutes(range.To.Minutes - range.From.Minutes)));
        var name = $"{power.Service.Name}, {StateShares.Word(row.State)}";
        var share = ShareOf($"{name}, load", state.Real, engine);
        var anHour = Burns(share);
        var burnt = Sum.Of($"{name}, fuel burnt", "v = q · t / 3600", Publication.Arithmetic)
            .Put("q", anHour)
            .Put("t", time)
            .Gives((volume, duration) => volume * duration.Hours);
        return new GeneratorSpell(state, row.Time.Value, time, share, ShareOf($"{name}, load of our own", state.Sure, engine), anHour, burnt);
    }

    // Between two rows of the table on a straight line; below the first as much as there.
    private Figure<Volume> Burns(Figure<Ratio> share)
    {
        if (share.Value is not { } load || curve?.Around(load) is not var (low, high))
        {
            return new Figure<Volume>(null, share.RestsOn, Reason.Derived.It);
        }

        var (below, above) = (RowAt(low.Load), RowAt(high.Load));
        var most = Burns(above);
        if (below.Load >= above.Load)
        {
            return most with { RestsOn = most.RestsOn.With(share.RestsOn) };
        }

        var part = Sum.Of("how far between two rows of the fuel table", "f = (p - a) / (b - a)", Publication.Arithmetic)
            .Put("p", LegSum.Percent(share))
            .Put("a", Fixed(below.Load.Percent, below.At))
            .Put("b", Fixed(above.Load.Percent, above.At))
            .Gives((percent, from, to) => (percent - from) / (to - from));
        return Sum.Of($"{power.Service.Name}, fuel an hour", "q = m + (n - m) · f", Publication.Arithmetic)
            .Put("m", Burns(below))
            .Put("n", most)
            .Put("f", part)
            .Gives((less, more, fraction) => less + ((more - less) * fraction));
    }

    private FuelRow RowAt(Ratio load) => set.Fuel.First(row => row.Load.CompareTo(load) == 0);

    private static Figure<Volume> Burns(FuelRow row) => Fixed(row.AnHour, row.At);

    private static Figure<T> Fixed<T>(T value, Mark at)
        where T : struct, IComparable<T> => new(value, Doubts.None, new Reason.Fixed(at));

    // ISO 8528: what is less than 30 % counts as that.
    private static Figure<double> Counted(GeneratorSpell spell) =>
        Sum.Of($"{StateShares.Word(spell.Power.State)}, load as it counts", "s = max(30, u)", Iso8528.Mean)
            .Put("u", LegSum.Percent(spell.Share))
            .Gives(percent => Math.Max(LeastPercent, percent));

    private int DryIn(IReadOnlyList<GeneratorSpell> spells, Figure<Volume> tank)
    {
        var burnt = 0.0;
        for (var index = 0; index < spells.Count && tank.Value is { } holds; index++)
        {
            burnt += spells[index].Burnt.Value!.Value.CubicMeters * policies.GeneratorFuel / 100;
            if (burnt > holds.CubicMeters)
            {
                return index;
            }
        }

        return -1;
    }

    private Figure<Duration> DryAt(IReadOnlyList<GeneratorSpell> spells, int index, Figure<double> margin)
    {
        var left = Sum.Of($"{power.Service.Name}, left in the tank, less the margin", "r = 100 · V / m - Σ vᵢ", Publication.CommonPractice)
            .Put("V", Figure.From(set.Tank!.Value))
            .Put("m", margin)
            .PutAll("vᵢ", spells.Take(index).Select(spell => spell.Burnt))
            .Gives((holds, percent, parts) => (holds * (100 / percent)) - Total(parts));
        var from = Duration.FromMinutes(spells[index].When.From.Minutes);
        return Sum.Of($"{power.Service.Name}, a full tank is used up, from midnight", "t = s + 3600 · r / q", Publication.Arithmetic)
            .Put("s", new Figure<Duration>(from, spells[index].Time.RestsOn, spells[index].Time.Why))
            .Put("r", left)
            .Put("q", spells[index].AnHour)
            .Gives((start, rest, volume) => start + Duration.FromHours(rest.CubicMeters / volume.CubicMeters));
    }

    private static Volume Total(Terms<Volume> parts) => Volume.FromCubicMeters(parts.Values.Sum(part => part.CubicMeters));
}
