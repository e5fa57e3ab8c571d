using Seedfall.Weather.Csv;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Formats;

/// <summary>NASA POWER's unit names to ours. They change with the community asked for, so nothing is taken for granted.</summary>
internal static class PowerUnits
{
    private const double MegajoulesPerKilowattHour = 3.6;
    private const double MegajoulesPerWattHour = 0.0036;
    private const double MegajoulesPerWattDay = 0.0864;

    /// <summary>Conversion of one parameter's values; refused for a unit that is not known.</summary>
    internal static Func<double, double> Scale(string parameter, string unit, bool isHourly) => (parameter, unit.Replace(" ", string.Empty, StringComparison.Ordinal)) switch
    {
        ("T2M" or "T2M_MAX" or "T2M_MIN", "C") => v => v,
        ("T2M" or "T2M_MAX" or "T2M_MIN", "K") => v => v - 273.15,
        ("PRECTOTCORR" or "PRECTOT", "mm/day") when !isHourly => v => v,
        ("PRECTOTCORR" or "PRECTOT", "mm/hour" or "mm/hr") when isHourly => v => v,
        ("RH2M", "%") => v => v,
        ("WS2M", "m/s") => v => v,
        ("WS10M", "m/s") => v => v * WindHeight.FactorTo2M(10.0, "WS10M", 0),
        ("ALLSKY_SFC_SW_DWN", "MJ/m^2/day" or "MJ/m^2") when !isHourly => v => v,
        ("ALLSKY_SFC_SW_DWN", "kW-hr/m^2/day" or "kWh/m^2/day" or "kW-hr/m^2") when !isHourly => v => v * MegajoulesPerKilowattHour,
        ("ALLSKY_SFC_SW_DWN", "W/m^2") when !isHourly => v => v * MegajoulesPerWattDay,
        ("ALLSKY_SFC_SW_DWN", "MJ/hr" or "MJ/m^2/hr" or "MJ/m^2/hour" or "MJ/m^2") when isHourly => v => v,
        ("ALLSKY_SFC_SW_DWN", "Wh/m^2" or "W/m^2" or "Wh/m^2/hr") when isHourly => v => v * MegajoulesPerWattHour,
        _ => throw new RefusedException(0, 0, $"a known unit for {parameter} of {(isHourly ? "hours" : "days")}", $"'{unit}'"),
    };
}
