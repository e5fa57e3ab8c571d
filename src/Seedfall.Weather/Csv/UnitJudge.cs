using Seedfall.Weather.Input;
using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>
/// The unit of temperatures and rain whose header names none, from the numbers alone; and whether numbers fit the unit a
/// header names. Where two units remain possible the file is refused: a plan made in the wrong unit is worse than none.
/// </summary>
internal static class UnitJudge
{
    /// <summary>Highest air temperature on record, 56.7 degC (World Meteorological Organization), rounded up.</summary>
    private const double HottestC = 57.0;

    /// <summary>The same in degF.</summary>
    private const double HottestF = 135.0;

    /// <summary>Mean daily range above which no degree scale is possible: about 20 degC or 36 degF in deserts.</summary>
    private const double WidestMeanRange = 45.0;

    /// <summary>Less rain than this in a year, mm, is rarer where lawns grow than inches under the wrong name.</summary>
    private const double DriestMm = 100.0;

    /// <summary>More rain than this in a year, mm, is rarer where lawns grow than tenths under the wrong name.</summary>
    private const double WettestMm = 4000.0;

    private const double MillimetersPerInch = 25.4;

    internal static (TemperatureUnit Unit, string Why) Temperature(ValueEvidence.Facts facts, ValueEvidence seen, bool isGhcn)
    {
        if (facts.HighTmax is not { } high)
        {
            return (TemperatureUnit.Celsius, "no value to judge by");
        }

        var wholeOnly = !seen.HasFraction(Element.TmaxC) && !seen.HasFraction(Element.TminC);
        if (high > HottestF || facts.MeanRange > WidestMeanRange)
        {
            return wholeOnly
                ? (TemperatureUnit.TenthsOfCelsius, "judged: whole numbers too large for degrees")
                : throw Doubt(FormattableString.Invariant($"temperatures up to {high:0.#} with fractions, which fit no unit"));
        }

        if (isGhcn && !seen.HasPoint(Element.TmaxC) && !seen.HasPoint(Element.RainMm))
        {
            return (TemperatureUnit.TenthsOfCelsius, "judged: GHCN whole numbers without a decimal point");
        }

        return high > HottestC
            ? (TemperatureUnit.Fahrenheit, FormattableString.Invariant($"judged: up to {high:0.#} is too hot for degC"))
            : Celsius(facts, wholeOnly, high);
    }

    internal static (RainUnit Unit, string Why) Rain(TemperatureUnit temperature) => temperature switch
    {
        TemperatureUnit.TenthsOfCelsius => (RainUnit.TenthsOfMillimeters, "goes with tenths of degC"),
        TemperatureUnit.Fahrenheit => (RainUnit.Inches, "goes with degF"),
        _ => (RainUnit.Millimeters, "goes with degC"),
    };

    /// <summary>Refuses temperatures that cannot be in the unit the header names.</summary>
    internal static void RequireTemperatureFits(ValueEvidence.Facts facts, ColumnUnit unit, string header)
    {
        var high = facts.HighTmax ?? 0;
        var doubt = unit switch
        {
            ColumnUnit.Celsius when facts.MeanRange > WidestMeanRange || high > HottestF => "values that look like tenths of a degree",
            ColumnUnit.Celsius when high > HottestC || facts.MeanTmin > 32 => "values that look like degF",
            ColumnUnit.Fahrenheit when facts.MeanRange > 2 * WidestMeanRange || high > 2 * HottestF => "values that look like tenths of a degree",
            ColumnUnit.Fahrenheit when facts.HasWholeYear && high < 57 => "values that look like degC",
            _ => null,
        };
        if (doubt is not null)
        {
            throw new RefusedException(1, 0, $"temperatures in the unit of '{header}'", FormattableString.Invariant($"{doubt}, up to {high:0.#}"));
        }
    }

    /// <summary>Refuses a year of rain that no lawn sees in the given unit.</summary>
    internal static void RequireRainFits(ValueEvidence.Facts facts, RainUnit unit, string header)
    {
        if (!facts.HasYearOfRain || facts.RainPerYear is not { } year)
        {
            return;
        }

        var mm = unit switch
        {
            RainUnit.Inches => year * MillimetersPerInch,
            RainUnit.TenthsOfMillimeters => year / 10.0,
            _ => year,
        };
        if (mm is < DriestMm or > WettestMm)
        {
            var hint = mm < DriestMm ? "inches, or a column without rain" : "tenths, or another unit";
            throw new RefusedException(
                1, 0, FormattableString.Invariant($"rain in '{header}' of {DriestMm:0} to {WettestMm:0} mm a year"),
                FormattableString.Invariant($"{mm:0.#} mm a year, which looks like {hint}"));
        }
    }

    private static (TemperatureUnit Unit, string Why) Celsius(ValueEvidence.Facts facts, bool wholeOnly, double high)
    {
        if (facts.MeanTmin > 32)
        {
            return (TemperatureUnit.Fahrenheit, "judged: nights too warm for degC");
        }

        if (facts.HasWholeYear)
        {
            return (TemperatureUnit.Celsius, FormattableString.Invariant($"judged: a year's heat of {high:0.#}"));
        }

        return wholeOnly
            ? throw Doubt(FormattableString.Invariant($"whole numbers up to {high:0.#} over less than a year, which may be degC, degF or tenths"))
            : (TemperatureUnit.Celsius, FormattableString.Invariant($"judged: fractions of degrees up to {high:0.#}"));
    }

    private static RefusedException Doubt(string found) =>
        new(1, 0, "a temperature unit in the header, such as tmax_c or tmax_f (or given as an option)", found);
}
