using Advance.Domain.Facts;
using UnitsNet;

namespace Advance.Reading.Phrases;

/// <summary>The quantities of a gig, but lengths, which have feet and inches, and lengths of time, which have hours and minutes. All values
/// come in base units, so that equal amounts are equal values however they were written.</summary>
internal static class Quantities
{
    public static readonly Phrase<Mass> Weight = QuantityPhrase.Of(
        "weight", UnitKinds.Mass, amount => Mass.FromKilograms(amount), false, "450 kg", "12.5kg", "1.2 t", "640 lb", "350 g");

    public static readonly Phrase<Length> Offset = QuantityPhrase.Of(
        "offset", UnitKinds.Length, amount => Length.FromMeters(amount), true, "-0.4 m", "0.35 m", "-16 in");

    public static readonly Phrase<ElectricCurrent> Current = QuantityPhrase.Of(
        "current", UnitKinds.Current, amount => ElectricCurrent.FromAmperes(amount), false, "63 A", "3.5 mA", "6 kA");

    public static readonly Phrase<ElectricPotential> Potential = QuantityPhrase.Of(
        "voltage", UnitKinds.Potential, amount => ElectricPotential.FromVolts(amount), false, "230 V", "11 kV");

    public static readonly Phrase<Power> Power = QuantityPhrase.Of(
        "power-drawn", UnitKinds.Power, amount => UnitsNet.Power.FromWatts(amount), false, "2.4 kW", "575 W");

    public static readonly Phrase<ElectricApparentPower> ApparentPower = QuantityPhrase.Of(
        "apparent-power", UnitKinds.ApparentPower, amount => ElectricApparentPower.FromVoltamperes(amount), false, "100 kVA", "800 VA");

    public static readonly Phrase<Frequency> Frequency = QuantityPhrase.Of(
        "frequency", UnitKinds.Frequency, amount => UnitsNet.Frequency.FromHertz(amount), false, "90 Hz", "1.2 kHz", "606.5 MHz");

    public static readonly Phrase<Angle> Angle = QuantityPhrase.Of(
        "angle", UnitKinds.Angle, amount => UnitsNet.Angle.FromDegrees(amount), true, "-10 deg", "7.5 deg", "5°");

    public static readonly Phrase<Ratio> Ratio = QuantityPhrase.Of(
        "percentage", UnitKinds.Ratio, amount => UnitsNet.Ratio.FromPercent(amount), false, "80 %", "12.5%");

    public static readonly Phrase<Temperature> Temperature = QuantityPhrase.Of(
        "temperature", UnitKinds.Temperature, amount => UnitsNet.Temperature.FromDegreesCelsius(amount), true, "20 C", "-5 °C", "68 F");

    public static readonly Phrase<Speed> Speed = QuantityPhrase.Of(
        "speed", UnitKinds.Speed, amount => UnitsNet.Speed.FromMetersPerSecond(amount), false, "17 m/s", "4 m/min", "16 ft/min", "30 mph");

    public static readonly Phrase<Force> Force = QuantityPhrase.Of(
        "force", UnitKinds.Force, amount => UnitsNet.Force.FromNewtons(amount), false, "5 kN", "1100 lbf");

    public static readonly Phrase<Mass> Load = QuantityPhrase.Of(
        "load", UnitKinds.Load, amount => Mass.FromKilograms(amount), false, "500 kg", "5 kN", "1100 lb");

    public static readonly Phrase<Torque> Moment = QuantityPhrase.Of(
        "moment", UnitKinds.Moment, amount => Torque.FromNewtonMeters(amount), false, "12.5 kNm", "9000 lbft");

    public static readonly Phrase<BendingStiffness> BendingStiffness = QuantityPhrase.Of(
        "bending-stiffness", UnitKinds.BendingStiffness, amount => new BendingStiffness(amount), false, "1200 kNm2");

    public static readonly Phrase<ForcePerLength> Stiffness = QuantityPhrase.Of(
        "stiffness", UnitKinds.Stiffness, amount => ForcePerLength.FromNewtonsPerMeter(amount), false, "250 kN/m");

    public static readonly Phrase<Pressure> AreaLoad = QuantityPhrase.Of(
        "area-load", UnitKinds.AreaLoad, amount => Pressure.FromPascals(amount), false, "5 kN/m2", "500 kg/m²", "100 lb/ft2");

    public static readonly Phrase<LinearDensity> WeightPerLength = QuantityPhrase.Of(
        "weight-per-length", UnitKinds.MassPerLength, amount => LinearDensity.FromKilogramsPerMeter(amount), false, "0.35 kg/m", "110 g/m");

    public static readonly Phrase<ElectricResistance> Resistance = QuantityPhrase.Of(
        "resistance", UnitKinds.Resistance, amount => ElectricResistance.FromOhms(amount), false, "8 ohm", "0.2 Ω", "35 mohm");

    public static readonly Phrase<Area> Area = QuantityPhrase.Of(
        "area", UnitKinds.Area, amount => UnitsNet.Area.FromSquareMeters(amount), false, "2.5 mm2", "40 m²");

    public static readonly Phrase<Level> Level = QuantityPhrase.Of(
        "level", UnitKinds.Level, amount => UnitsNet.Level.FromDecibels(amount), true, "-6 dB", "96 dB");

    public static readonly Phrase<Volume> Volume = QuantityPhrase.Of(
        "volume", UnitKinds.Volume, amount => UnitsNet.Volume.FromCubicMeters(amount), false, "200 l", "1.5 m3");
}
