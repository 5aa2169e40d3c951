using Advance.Domain.Venues;
using Advance.Reading.Shapes;

namespace Advance.Reading.Venues;

/// <summary>The set behind a service.</summary>
internal static class GeneratorShape
{
    private static readonly RecordShape<FuelRow> FuelRow = new("fuel-at", "What a set burns at one load.", keys =>
    {
        var load = keys.Needed("load", Written.Percentage, "Share of its rating.");
        var anHour = keys.Needed("an-hour", Written.Volume, "What it burns in an hour.");
        return row => new FuelRow(load(row), anHour(row), row.At);
    });

    public static readonly RecordShape<Generator> It = new("generator", "The set that gives a service.", keys =>
    {
        var rating = keys.Asked("rating", Written.ApparentPower, "Rated apparent power, prime.");
        var engine = keys.Open("engine", Written.Power, "What its engine gives, prime.");
        var derating = keys.Open("derating", Written.Percentage, "What is left of its rating in this place, for height and heat, by its maker.");
        var sustained = keys.Open("sustained", Written.Current, "What it drives into a short circuit for as long as a device needs to open.");
        var step = keys.Open("step", Written.Percentage, "The largest step of load it takes at once, as a share of its rating.");
        var leading = keys.Open("leading", Written.ApparentPower, "The most leading reactive power it bears.");
        var unbalance = keys.Open("unbalance", Written.Percentage, "How uneven its legs may be: negative over positive sequence.");
        var fuel = keys.Any("fuel", Written.Table(FuelRow), "What it burns at some shares of its rating.");
        var tank = keys.Open("tank", Written.Volume, "How much its tank holds.");
        var noise = keys.Open("noise", Written.Level, "How loud it is at 7 m.");
        var second = keys.Open("second-set", Written.Text, "What takes over when it stops.");
        return row => new Generator
        {
            Rating = rating(row),
            Engine = engine(row),
            Derating = derating(row),
            Sustained = sustained(row),
            Step = step(row),
            Leading = leading(row),
            Unbalance = unbalance(row),
            Fuel = fuel(row),
            Tank = tank(row),
            Noise = noise(row),
            SecondSet = second(row),
            At = row.At,
        };
    });
}
