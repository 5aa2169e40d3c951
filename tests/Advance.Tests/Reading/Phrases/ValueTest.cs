using Advance.Domain.Facts;
using Advance.Domain.Places;
using Advance.Reading.Phrases;
using UnitsNet;

namespace Advance.Tests.Reading.Phrases;

/// <summary>What the notations mean.</summary>
public sealed class ValueTest
{
    [Theory]
    [InlineData("12 m", 12)]
    [InlineData("12m", 12)]
    [InlineData(".5 m", 0.5)]
    [InlineData("45 cm", 0.45)]
    [InlineData("250 mm", 0.25)]
    [InlineData("1.2 km", 1200)]
    [InlineData("39 ft", 11.8872)]
    [InlineData("12' 6\"", 3.81)]
    [InlineData("12’ 6”", 3.81)]
    [InlineData("12'6\"", 3.81)]
    [InlineData("12 ft 6 in", 3.81)]
    [InlineData("12'", 3.6576)]
    [InlineData("6-1/2 in", 0.1651)]
    [InlineData("6 1/2 in", 0.1651)]
    [InlineData("6½\"", 0.1651)]
    [InlineData("1/2 in", 0.0127)]
    [InlineData("5' 6-3/4\"", 1.69545)]
    public void Lengths_come_in_metres(string text, double metres) => Assert.Equal(metres, Read(Lengths.Length, text).Meters, 9);

    [Fact]
    public void Quantities_come_in_base_units()
    {
        Assert.Equal(1200, Read(Quantities.Weight, "1.2 t").Kilograms, 9);
        Assert.Equal(290.2991168, Read(Quantities.Weight, "640 lb").Kilograms, 9);
        Assert.Equal(0.0035, Read(Quantities.Current, "3.5 mA").Amperes, 9);
        Assert.Equal(2400, (double)Read(Quantities.Power, "2.4 kW").Watts, 9);
        Assert.Equal(606.5e6, Read(Quantities.Frequency, "606.5 MHz").Hertz, 3);
        Assert.Equal(0.0042, Read(Durations.Duration, "4.2 ms").Seconds, 9);
        Assert.Equal(5400, Read(Durations.Duration, "1 h 30 min").Seconds, 9);
        Assert.Equal(5400, Read(Durations.Duration, "1.0 h 30 min").Seconds, 9);
        Assert.Matches($"^(?:{Durations.Duration.Pattern})$", "1.0 h 30 min");
        Assert.Equal(-10, Read(Quantities.Angle, "−10 deg").Degrees, 9);
        Assert.Equal(20, Read(Quantities.Temperature, "68 F").DegreesCelsius, 9);
        Assert.Equal(1 / 15.0, Read(Quantities.Speed, "4 m/min").MetersPerSecond, 9);
        Assert.Equal(4903.325, Read(Quantities.AreaLoad, "500 kg/m²").Pascals, 6);
        Assert.Equal(4788.0259, Read(Quantities.AreaLoad, "100 lb/ft2").Pascals, 3);
        Assert.Equal(2.5e-6, Read(Quantities.Area, "2.5 mm2").SquareMeters, 12);
        Assert.Equal(80, Read(Quantities.Ratio, "80%").Percent, 9);
    }

    [Theory]
    [InlineData("3.6576 m", "12'")]
    [InlineData("45 cm", "450 mm")]
    public void Equal_amounts_are_equal_values_however_they_were_written(string one, string other) =>
        Assert.Equal(Read(Lengths.Length, one), Read(Lengths.Length, other));

    [Theory]
    [InlineData("8 x 5 m", 8, 5, null)]
    [InlineData("8x5m", 8, 5, null)]
    [InlineData("8 m x 50 cm", 8, 0.5, null)]
    [InlineData("2 x 1 x 0.2 m", 2, 1, 0.2)]
    [InlineData("12 × 8' 6\"", 3.6576, 2.5908, null)]
    public void One_unit_may_close_a_size(string text, double width, double depth, double? height)
    {
        var size = Read(Sizes.Size, text);

        Assert.Equal((width, depth), (Math.Round(size.Width.Meters, 9), Math.Round(size.Depth.Meters, 9)));
        Assert.Equal(height, size.Height?.Meters);
    }

    [Theory]
    [InlineData("Sat 12 Sep 2026", DayOfWeek.Saturday, 12, 9, 2026)]
    [InlineData("Saturday, 12 September 2026", DayOfWeek.Saturday, 12, 9, 2026)]
    [InlineData("fri 4 sept", DayOfWeek.Friday, 4, 9, null)]
    [InlineData("29 Feb", null, 29, 2, null)]
    [InlineData("Mon 12 Sep 2026", DayOfWeek.Monday, 12, 9, 2026)]
    public void Dates_keep_their_weekday_right_or_wrong(string text, DayOfWeek? weekday, int day, int month, int? year) =>
        Assert.Equal(new WrittenDate(weekday, day, month, year), Read(Dates.Date, text));

    [Theory]
    [InlineData("19:30", 1170)]
    [InlineData("9:05", 545)]
    [InlineData("00:30 +1", 1470)]
    [InlineData("00:30+1", 1470)]
    public void Times_are_minutes_of_the_gig_s_day(string text, int minutes) => Assert.Equal(new Moment(minutes), Read(Moments.Moment, text));

    [Fact]
    public void Times_have_lengths_and_ends()
    {
        Assert.Equal(new SetTime(Moment.At(20, 0), Duration.FromSeconds(2700)), Read(Moments.Set, "20:00 for 45 min"));
        Assert.Equal(new MomentRange(Moment.At(22, 0), Moment.At(7, 0, nextDay: true)), Read(Moments.Range, "22:00 to 07:00 +1"));
    }

    public static readonly TheoryData<string, Place> PlacesSaid = new()
    {
        { "USR", new Place.AtArea(StageArea.UpstageRight) },
        { "SR", new Place.AtArea(StageArea.StageRight) },
        { "centre", Place.Centre.It },
        { "SR 4.6 m US 0.4 m", Ground(4.6, Side.StageRight, 0.4) },
        { "DS 0.4 m SL 4.6 m", Ground(4.6, Side.StageLeft, -0.4) },
        { "DS 16 m", Ground(0, null, -16) },
        { "4.6 m off centre DS 0.4 m", Ground(4.6, null, -0.4) },
        { "6 m US of hall door line", Ground(0, null, 6, "hall door line") },
        { "SL 2m of drum riser", Ground(2, Side.StageLeft, 0, "drum riser") },
        { "at O’Brien’s riser", new Place.AtThing("O’Brien’s riser") },
        { "drums", new Place.AtThing("drums") },
        { "C stand", new Place.AtThing("C stand") },
        { "[1.2, -4, 6.5 m]", new Place.AtPoint(Metres(1.2), Metres(-4), Metres(6.5)) },
        { "[12', 4 m]", new Place.AtPoint(Metres(3.6576), Metres(4), null) },
    };

    [Theory]
    [MemberData(nameof(PlacesSaid))]
    public void Places_are_said_as_on_a_dock(string text, Place place) => Assert.Equal(place, Read(Places.Place, text));

    [Fact]
    public void Aims_heights_and_sides_are_told_apart()
    {
        Assert.Equal(Aim.Straight.It, Read(Directions.Aim, "straight"));
        Assert.Equal(new Aim.Toed(Angle.FromDegrees(-10)), Read(Directions.Aim, "toe-out 10 deg"));
        Assert.Equal(new Aim.AtPlace(Ground(0, null, -16)), Read(Directions.Aim, "at DS 16 m"));
        Assert.Equal(new HeightFrom(Metres(6.5), "floor"), Read(Directions.Height, "6.5 m above floor"));
        Assert.Equal(new HeightFrom(Metres(-1.2), "deck"), Read(Directions.Height, "1.2 m below deck"));
        Assert.Equal(new HeightFrom(Metres(2)), Read(Directions.Height, "2 m"));
        Assert.Equal(new Sides(Side.StageLeft, Side.StageRight), Read(Directions.Sides, "SL SR"));
    }

    [Theory]
    [InlineData("6 x wedge-12", 6, "wedge-12", Stance.Usual)]
    [InlineData("6× wedge-12", 6, "wedge-12", Stance.Usual)]
    [InlineData("top-10 upside-down", 1, "top-10", Stance.UpsideDown)]
    [InlineData("2 x sub-18 rear-facing upside-down", 2, "sub-18", Stance.RearFacing | Stance.UpsideDown)]
    [InlineData("12 way splitter", 1, "12 way splitter", Stance.Usual)]
    [InlineData("drum kit", 1, "drum kit", Stance.Usual)]
    public void Items_are_counted(string text, int count, string item, Stance stance) =>
        Assert.Equal(new CountedItem(count, item, stance), Read(Things.Counted, text));

    [Fact]
    public void Ports_belong_to_a_device()
    {
        Assert.Equal(new PortRange("DRIVE", PortKind.Output, new(1, 2)), Read(Things.Port, "DRIVE out 1-2"));
        Assert.Equal(new PortRange("Rack in the wings", PortKind.Input, new(3, 3)), Read(Things.Port, "Rack in the wings in 3"));
        Assert.Equal(new PortRange("PD1", PortKind.Outlet, new(3, 3)), Read(Things.Port, "PD1 outlet 3"));
        Assert.Equal(new PortRange("DRIVE", PortKind.Output), Read(Things.Port, "DRIVE out"));
        Assert.Equal(new PortRange("service A"), Read(Things.Port, "service A"));
    }

    [Fact]
    public void Owners_may_have_names()
    {
        Assert.Equal(new Owner(OwnerKind.Hire, "Vale Radio Hire"), Read(Things.Owner, "hire Vale Radio Hire"));
        Assert.Equal(new Owner(OwnerKind.Act), Read(Things.Owner, "act"));
        Assert.Equal(new Owner(OwnerKind.Shop), Read(Things.Owner, "shop"));
    }

    [Fact]
    public void The_shop_has_notations_of_its_own()
    {
        Assert.Equal(new Weighed(Mass.FromKilograms(52), Known.Weighed), Read(Kit.Weighed, "52 kg weighed"));
        Assert.Equal(new Weighed(Mass.FromKilograms(3), Known.Stated), Read(Kit.Weighed, "3 kg"));
        Assert.Equal(new CountedItem(8, "case-mic"), Read(Kit.Packs, "8 in case-mic"));
        Assert.Equal(new(10, 2), Read(Kit.Share, "10 % at least 2"));
        Assert.Equal(new(Frequency.FromHertz(100), "sub-18"), Read(Kit.Crossover, "100 Hz in sub-18"));
    }

    private static Place.Measured Ground(double sideways, Side? side, double upstage, string? of = null) => new(Metres(sideways), side, Metres(upstage), of);

    private static Length Metres(double metres) => Length.FromMeters(metres);

    private static T Read<T>(Phrase<T> phrase, string text)
        where T : notnull
    {
        var isRead = phrase.TryRead(text, out var value, out var fault);
        Assert.True(isRead, fault?.ToString());
        return value!;
    }
}
