using Seedfall.Engine.Units;
using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>How a column's numbers become the units of <see cref="Element"/>.</summary>
/// <param name="Unit">The unit they stand in, for the report.</param>
/// <param name="Why">How that is known.</param>
/// <param name="Convert">The conversion.</param>
internal sealed record UnitScale(string Unit, string Why, Func<double, double> Convert)
{
    private const double MegajoulesPerKilowattHour = 3.6;
    private const double MegajoulesPerWattDay = 0.0864;
    private const double MetersPerSecondPerKnot = 0.514444;

    /// <summary>True for -99 and -99.9, codes for missing where tenths are not the unit.</summary>
    internal bool IsMissing(double value) => !Unit.StartsWith("tenths", StringComparison.Ordinal) && (Math.Abs(value + 99) < 1e-6 || Math.Abs(value + 99.9) < 1e-6);

    internal static UnitScale Temperature(ColumnUnit unit, (TemperatureUnit Unit, string Why) file, string header, int field) => unit switch
    {
        ColumnUnit.Celsius => new("degC", "by header", v => v),
        ColumnUnit.Fahrenheit => new("degF", "by header", FromFahrenheit),
        ColumnUnit.Kelvin => new("K", "by header", v => v - 273.15),
        ColumnUnit.None => file.Unit switch
        {
            TemperatureUnit.Fahrenheit => new("degF", file.Why, FromFahrenheit),
            TemperatureUnit.TenthsOfCelsius => new("tenths of degC", file.Why, v => v / 10.0),
            _ => new("degC", file.Why, v => v),
        },
        _ => throw WrongUnit(field, header, "c, f or k"),
    };

    internal static UnitScale Rain(ColumnUnit unit, (RainUnit Unit, string Why) file, string header, int field) => unit switch
    {
        ColumnUnit.Centimeters => new("cm", "by header", v => v * 10.0),
        ColumnUnit.None or ColumnUnit.Millimeters or ColumnUnit.Inches => file.Unit switch
        {
            RainUnit.Inches => new("in", file.Why, v => Depth.FromInches(v).Millimeters),
            RainUnit.TenthsOfMillimeters => new("tenths of mm", file.Why, v => v / 10.0),
            _ => new("mm", file.Why, v => v),
        },
        _ => throw WrongUnit(field, header, "mm, cm or in"),
    };

    /// <summary>Wind to m/s at 2 m. A column that does not say its height is taken to be measured at 10 m, and said.</summary>
    internal static UnitScale Wind(HeaderName header, TemperatureUnit temperature, bool isGhcn, int field, FileDraft file)
    {
        var (unit, perUnit, why) = header.Unit switch
        {
            ColumnUnit.MetersPerSecond => ("m/s", 1.0, "by header"),
            ColumnUnit.KilometersPerHour => ("km/h", 1 / 3.6, "by header"),
            ColumnUnit.MilesPerHour => ("mph", Speed.FromMilesPerHour(1).MetersPerSecond, "by header"),
            ColumnUnit.Knots => ("kt", MetersPerSecondPerKnot, "by header"),
            ColumnUnit.None when temperature == TemperatureUnit.TenthsOfCelsius => ("tenths of m/s", 0.1, "goes with tenths of degC"),
            ColumnUnit.None when temperature == TemperatureUnit.Fahrenheit => ("mph", Speed.FromMilesPerHour(1).MetersPerSecond, "goes with degF"),
            ColumnUnit.None => ("m/s", 1.0, "goes with degC"),
            _ => throw WrongUnit(field, header.Text, "m_s, km_h, mph or kt"),
        };
        if (header.WindHeightM is null)
        {
            file.Notes.Add($"'{header.Text}' does not say the height of the wind: 10 m taken, brought to 2 m.");
        }

        var factor = perUnit * WindHeight.FactorTo2M(header.WindHeightM ?? WindHeight.UsualM, header.Text, field);
        return new UnitScale(unit, isGhcn && header.Unit == ColumnUnit.None ? "by layout" : why, v => v * factor);
    }

    /// <summary>Sun, humidity, soil moisture; null for a column whose unit cannot be known.</summary>
    internal static UnitScale? Other(Element element, HeaderName header, ValueEvidence seen, int field, FileDraft file) => (element, header.Unit) switch
    {
        (Element.SolarMJ, ColumnUnit.MegajoulesPerM2) => new("MJ/m2", "by header", v => v),
        (Element.SolarMJ, ColumnUnit.KilowattHoursPerM2) => new("kWh/m2", "by header", v => v * MegajoulesPerKilowattHour),
        (Element.SolarMJ, ColumnUnit.WattsPerM2) => new("W/m2, mean of the day", "by header", v => v * MegajoulesPerWattDay),
        (Element.SolarMJ, ColumnUnit.None) => NotUsed(header, file),
        (Element.SoilMoisture5Cm, ColumnUnit.VolumeFraction or ColumnUnit.None) => new("m3/m3", header.Unit == ColumnUnit.None ? "usual" : "by header", v => v),
        (Element.SoilMoisture5Cm, ColumnUnit.Percent) => new("%", "by header", v => v / 100.0),
        (Element.HumidityMaxPct or Element.HumidityMinPct or Element.HumidityMeanPct, ColumnUnit.Percent or ColumnUnit.None) =>
            Humidity(element, header, seen, field),
        _ => throw WrongUnit(field, header.Text, "a unit of " + Elements.Name(element)),
    };

    private static UnitScale Humidity(Element element, HeaderName header, ValueEvidence seen, int field) => seen.Highest(element) is > 0 and <= 1.0
        ? throw new RefusedException(1, field + 1, $"humidity in percent in '{header.Text}'", "shares of 1")
        : new UnitScale("%", header.Unit == ColumnUnit.None ? "usual" : "by header", v => v);

    private static UnitScale? NotUsed(HeaderName header, FileDraft file)
    {
        file.Notes.Add($"'{header.Text}' names no unit and was not used; name it such as solar_mj_m2, solar_kwh_m2 or solar_w_m2.");
        return null;
    }

    private static double FromFahrenheit(double value) => Engine.Units.Temperature.FromFahrenheit(value).Celsius;

    private static RefusedException WrongUnit(int field, string header, string units) => new(1, field + 1, $"a header whose unit is {units}", $"'{header}'");
}
