using System.Globalization;
using Seedfall.Engine.Units;

namespace Seedfall.Engine.Workings;

/// <summary>A value as shown: number and unit apart, so that a page can set the number large.</summary>
public sealed record ShownValue(string Number, string Unit)
{
    public override string ToString() => Unit.Length == 0 ? Number : Unit == "%" ? $"{Number} %" : $"{Number} {Unit}";
}

/// <summary>Figures as text in either unit system, with three significant digits and never a false precision.</summary>
public static class FigureText
{
    private const double SquareFeetPerSquareMeter = 1.0 / 0.09290304;

    /// <summary>The figure in one unit system.</summary>
    public static ShownValue Show(Figure figure, UnitSystem system, string currency = "USD") => Show(figure.Kind, figure.Value, system, currency);

    /// <summary>Both systems in one line, for example <c>12.4 lb (5.62 kg)</c>; once where both read the same.</summary>
    public static string Both(Figure figure, UnitSystem first = UnitSystem.UsCustomary, string currency = "USD")
    {
        var second = first == UnitSystem.UsCustomary ? UnitSystem.Metric : UnitSystem.UsCustomary;
        var (a, b) = (Show(figure, first, currency).ToString(), Show(figure, second, currency).ToString());
        return a == b ? a : $"{a} ({b})";
    }

    /// <summary>A value of a kind, given in that kind's canonical unit, in one unit system.</summary>
    public static ShownValue Show(QuantityKind kind, double value, UnitSystem system, string currency = "USD")
    {
        var us = system == UnitSystem.UsCustomary;
        return kind switch
        {
            QuantityKind.Number => new(Significant(value), ""),
            QuantityKind.Count => new(Whole(value), ""),
            QuantityKind.Share => new(Significant(value * 100.0), "%"),
            QuantityKind.Chance => new(Whole(value * 100.0), "%"),
            QuantityKind.Length => us ? new(Significant(new Length(value).Feet), "ft") : new(Significant(value), "m"),
            QuantityKind.Depth => us ? new(Significant(new Depth(value).Inches), "in") : new(Significant(value), "mm"),
            QuantityKind.Area => us ? new(Whole(new Area(value).SquareFeet), "sq ft") : new(Significant(value), "m2"),
            QuantityKind.Mass => us ? Pounds(value) : value < 1.0 ? new(Significant(value * 1000.0), "g") : new(Significant(value), "kg"),
            QuantityKind.Volume => us ? new(Significant(new Volume(value).Gallons), "gal") : new(Significant(value), "L"),
            QuantityKind.Dose => us ? new(Significant(new Volume(value).FluidOunces), "fl oz") : new(Significant(value * 1000.0), "mL"),
            QuantityKind.DryDose => us ? new(Significant(new Mass(value).Ounces), "dry oz") : new(Significant(value * 1000.0), "g"),
            QuantityKind.BulkVolume => us ? new(Significant(new Volume(value).CubicYards), "cu yd") : new(Significant(value / 1000.0), "m3"),
            QuantityKind.FlowRate => us ? new(Significant(new FlowRate(value).GallonsPerMinute), "gpm") : new(Significant(value), "L/min"),
            QuantityKind.PrecipitationRate => us ? new(Significant(new PrecipitationRate(value).InchesPerHour), "in/h") : new(Significant(value), "mm/h"),
            QuantityKind.MassPerArea => us ? new(Significant(new MassPerArea(value).PoundsPerThousandSquareFeet), "lb per 1,000 sq ft") : new(Significant(value * 100.0), "kg per 100 m2"),
            QuantityKind.VolumePerArea => us ? new(Significant(new VolumePerArea(value).GallonsPerThousandSquareFeet), "gal per 1,000 sq ft") : new(Significant(value * 100.0), "L per 100 m2"),
            QuantityKind.LabelRate => us ? new(Significant(new VolumePerArea(value).FluidOuncesPerAcre), "fl oz per acre") : new(Significant(value * 1.0e4), "L/ha"),
            QuantityKind.DryLabelRate => DryLabelRate(new MassPerArea(value), us),
            QuantityKind.CarrierRate => us ? new(Significant(new VolumePerArea(value).GallonsPerAcre), "gal per acre") : new(Significant(value * 1.0e4), "L/ha"),
            QuantityKind.Pressure => us ? new(Significant(new Pressure(value).PoundsPerSquareInch), "psi") : new(Significant(value), "kPa"),
            QuantityKind.Seconds => new(Tenth(value), "s"),
            QuantityKind.CountPerArea => us ? new(Significant(value / SquareFeetPerSquareMeter / 144.0), "per sq in") : new(Significant(value / 100.0), "per dm2"),
            QuantityKind.Temperature => us ? new(Tenth(new Temperature(value).Fahrenheit), "degF") : new(Tenth(value), "degC"),
            QuantityKind.TemperatureDifference => us ? new(Tenth(value * 1.8), "degF") : new(Tenth(value), "degC"),
            QuantityKind.Speed => us ? new(Significant(new Speed(value).MilesPerHour), "mph") : new(Significant(value), "m/s"),
            QuantityKind.Minutes => new(value < 10.0 ? Tenth(value) : Whole(value), "min"),
            QuantityKind.Days => new(Whole(value), Math.Round(value) == 1.0 ? "day" : "days"),
            QuantityKind.Money => new(value.ToString("#,##0.00", CultureInfo.InvariantCulture), currency),
            QuantityKind.Date => new(DateText(DateOnly.FromDayNumber((int)value), us), ""),
            _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a kind of quantity"),
        };
    }

    /// <summary>A date as the lawn's owner reads it: <c>Sep 8, 2026</c>, or <c>8 Sep 2026</c> beside metric units.</summary>
    public static string DateText(DateOnly date, bool monthFirst = true) =>
        date.ToString(monthFirst ? "MMM d, yyyy" : "d MMM yyyy", CultureInfo.InvariantCulture);

    private static ShownValue Pounds(double kilograms)
    {
        var mass = new Mass(kilograms);
        return Math.Abs(mass.Pounds) is < 1.0 and > 0.0 ? new(Significant(mass.Ounces), "oz") : new(Significant(mass.Pounds), "lb");
    }

    /// <summary>As labels print it: pounds from a pound per acre on, kilograms from a kilogram per hectare on.</summary>
    private static ShownValue DryLabelRate(MassPerArea rate, bool us) => us
        ? rate.PoundsPerAcre < 1.0 ? new(Significant(Mass.FromPounds(rate.PoundsPerAcre).Ounces), "dry oz per acre") : new(Significant(rate.PoundsPerAcre), "lb per acre")
        : rate.KilogramsPerHectare < 1.0 ? new(Significant(rate.KilogramsPerHectare * 1000.0), "g/ha") : new(Significant(rate.KilogramsPerHectare), "kg/ha");

    private static string Whole(double value) =>
        (Math.Round(value, MidpointRounding.AwayFromZero) + 0.0).ToString("#,##0", CultureInfo.InvariantCulture);

    private static string Tenth(double value) => value.ToString("#,##0.#", CultureInfo.InvariantCulture);

    /// <summary>Three significant digits, never an exponent, no trailing zeros after the point.</summary>
    private static string Significant(double value)
    {
        var size = Math.Abs(value);
        if (size == 0.0)
        {
            return "0";
        }

        var decimals = Math.Clamp(2 - (int)Math.Floor(Math.Log10(size)), 0, 6);
        return value.ToString(decimals == 0 ? "#,##0" : "#,##0." + new string('#', decimals), CultureInfo.InvariantCulture);
    }
}
