namespace Seedfall.Planning.Timing;

/// <summary>One autumn's soil and night temperatures, one value per day of the <see cref="SeasonCalendar"/>.</summary>
/// <param name="Year">Calendar year of the autumn.</param>
/// <param name="SoilC">Daily mean at 2 in, degC.</param>
/// <param name="TminC">Lowest air temperature, degC.</param>
internal sealed record SeasonWeather(int Year, double[] SoilC, double[] TminC);
