using Advance.Domain.Venues;
using Advance.Handbook;
using UnitsNet;

namespace Advance.Published;

/// <summary>Wind pressure and the Beaufort scale, as tables and worked examples print them.</summary>
public sealed class WindTables
{
    /// <summary>q = v² / 1.6 of EN 1991-1-4 with 1.25 kg/m³; the British 0.613 v²; an engineering table with 1.2 kg/m³, printed to 1 Pa.</summary>
    [Theory]
    [InlineData(10, 62.5, 61.3, 60)]
    [InlineData(12, 90.0, 88.3, 86)]
    [InlineData(15, 140.6, 137.9, 135)]
    [InlineData(20, 250.0, 245.2, 240)]
    [InlineData(25, 390.6, 383.1, 375)]
    [InlineData(28.4, 504.1, 494.4, 484)]
    [InlineData(30, 562.5, 551.7, 540)]
    [InlineData(35, 765.6, 750.9, 735)]
    public void Pressure_of_three_densities(double speed, double european, double british, double engineering)
    {
        var gust = Speed.FromMetersPerSecond(speed);
        Near.Within(european, WindPressure.Of(gust).Pascals, 0.051);
        Near.Within(british, WindPressure.Of(gust, 2 * 0.613).Pascals, 0.051);
        Near.Within(engineering, WindPressure.Of(gust, 1.2).Pascals, 0.51);
    }

    /// <summary>35 m/s on 10 m² with 1.2 kg/m³: 7,350 N (an engineering site's worked example).</summary>
    [Fact]
    public void Force_on_ten_square_metres() =>
        Near.Within(7350, WindPressure.On(WindPressure.Of(Speed.FromMetersPerSecond(35), 1.2), Area.FromSquareMeters(10)).Newtons, 0.5);

    /// <summary>0.00256 V² psf for V in mph: 15 mph gives 0.576 psf as an answer among engineers works it out; 70 mph gives 12.54.</summary>
    [Theory]
    [InlineData(15, 0.576)]
    [InlineData(70, 12.54)]
    public void Pounds_per_square_foot(double mph, double psf) =>
        Near.WithinPercent(psf, WindPressure.PoundsPerSquareFoot(WindPressure.Of(Speed.FromMilesPerHour(mph), 1.2255)), 0.3);

    /// <summary>A panel of 10 by 4 ft at 15 mph with a coefficient of 2: 46.08 lb, in the same answer.</summary>
    [Fact]
    public void Panel_in_pounds()
    {
        var seen = Area.FromSquareFeet(40) * 2;
        var force = WindPressure.On(WindPressure.Of(Speed.FromMilesPerHour(15), 1.2255), seen);
        Near.WithinPercent(46.08, force.PoundsForce, 0.3);
    }

    /// <summary>First and last speeds of each row, m/s, in the scale of a marine forecast handbook, page 60: a mean at 10 m.</summary>
    [Theory]
    [InlineData(0, 0.2, 0)]
    [InlineData(0.3, 1.5, 1)]
    [InlineData(1.6, 3.3, 2)]
    [InlineData(3.4, 5.4, 3)]
    [InlineData(5.5, 7.9, 4)]
    [InlineData(8.0, 10.7, 5)]
    [InlineData(10.8, 13.8, 6)]
    [InlineData(13.9, 17.1, 7)]
    [InlineData(17.2, 20.7, 8)]
    [InlineData(20.8, 24.4, 9)]
    [InlineData(24.5, 28.4, 10)]
    [InlineData(28.5, 32.6, 11)]
    [InlineData(32.7, 60, 12)]
    public void Beaufort_scale(double first, double last, int number)
    {
        Assert.Equal(number, Beaufort.Of(Speed.FromMetersPerSecond(first)));
        Assert.Equal(number, Beaufort.Of(Speed.FromMetersPerSecond(last)));
    }

    /// <summary>Action levels of event guidance: 20, 25, 30, 35 mph.</summary>
    [Theory]
    [InlineData(20, 8.94)]
    [InlineData(25, 11.18)]
    [InlineData(30, 13.41)]
    [InlineData(35, 15.65)]
    public void Miles_an_hour(double mph, double metres) => Near.Within(metres, Speed.FromMilesPerHour(mph).MetersPerSecond, 0.0051);

    /// <summary>Exposure factor of EN 1991-1-4 figure 4.2 at 10 m, from memory: 3.0, 2.8, 2.35, 1.7, 1.2 for terrains 0 to IV, read off curves.</summary>
    [Theory]
    [InlineData(Terrain.Sea, 3.0)]
    [InlineData(Terrain.Flat, 2.75)]
    [InlineData(Terrain.Open, 2.35)]
    [InlineData(Terrain.Suburb, 1.7)]
    [InlineData(Terrain.Town, 1.18)]
    public void Exposure_at_ten_metres_from_memory(Terrain terrain, double factor) => Near.WithinPercent(factor, GustProfile.Exposure(Length.FromMeters(10), terrain), 3);

    /// <summary>In open country the gust at 5 m is about 1.4 times the mean at 10 m, and presses 2.5 times what the mean at 5 m does (EN 1991-1-4 4.5).</summary>
    [Fact]
    public void Gust_at_five_metres()
    {
        var high = Length.FromMeters(5);
        Near.Within(1.4, GustProfile.Gust(high, Terrain.Open), 0.02);
        var mean = GustProfile.Mean(high, Terrain.Open);
        Near.Within(2.5, GustProfile.Exposure(high, Terrain.Open) / (mean * mean), 0.03);
    }

    /// <summary>Below the least height of its terrain nothing changes any more; with height it only grows.</summary>
    [Fact]
    public void Profile_grows_with_height()
    {
        Near.Within(GustProfile.Gust(Length.FromMeters(5), Terrain.Suburb), GustProfile.Gust(Length.FromMeters(1), Terrain.Suburb), 1e-12);
        Assert.True(GustProfile.Gust(Length.FromMeters(20), Terrain.Open) > GustProfile.Gust(Length.FromMeters(10), Terrain.Open));
    }
}
