using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary>
/// The usual year of a place: what deep soil remembers and how dry the ground generally is. Taken from the whole weather
/// history, so it is a property of the place and not of one season.
/// </summary>
/// <param name="MeanAirC">Annual mean air temperature, degC.</param>
/// <param name="CosineC">Cosine term of the annual wave of air temperature on the season angle, degC.</param>
/// <param name="SineC">Sine term of the same, degC.</param>
/// <param name="AridityLog">ln(annual rain / annual reference evapotranspiration); below 0 where the air could take more than falls.</param>
/// <param name="UsualRangeC">Mean of the daily high less the daily low, degC, at least 3.</param>
/// <param name="MonthsKnown">Months of the year with at least 20 days in the history, 0 to 12.</param>
public sealed record PlaceClimate(double MeanAirC, double CosineC, double SineC, double AridityLog, double UsualRangeC, int MonthsKnown)
{
    private const int DaysForAMonth = 20;
    private const double MonthsForHalfTrust = 6.0;
    private const double DaysPerMonth = 30.0;
    private const double HumidAridityLog = -0.4;
    private const double DriestDeficit = 1.1;
    private const double AssumedRangeC = 11.5;
    private const double LeastRangeC = 3.0;

    /// <summary>Aridity assumed where no month is known: a humid place.</summary>
    public const double AssumedAridityLog = -0.1;

    /// <summary>True where part of the usual year had to be assumed from latitude and elevation.</summary>
    public bool Assumed => MonthsKnown < 11;

    /// <summary>How much drier the place is than humid grassland: 0 for humid, 1.1 at most, so that nothing is extrapolated beyond the driest fitted place.</summary>
    public double DrynessDeficit => Math.Clamp(HumidAridityLog - AridityLog, 0.0, DriestDeficit);

    /// <summary>Half the difference between the warmest and the coldest of the annual wave, degC.</summary>
    public double AmplitudeC => Math.Sqrt((CosineC * CosineC) + (SineC * SineC));

    /// <summary>Annual wave of air temperature smoothed exponentially with a time constant, degC, at a season angle.</summary>
    public double SmoothedC(double seasonRad, double timeConstantDays)
    {
        var wt = 2.0 * Math.PI / SeasonAngle.DaysPerYear * timeConstantDays;
        var gain = 1.0 / Math.Sqrt(1.0 + (wt * wt));
        return Wave(seasonRad - Math.Atan(wt), gain);
    }

    /// <summary>Annual wave of soil temperature at a depth below a surface that follows the air, degC; damping depth in m.</summary>
    public double AtDepthC(double seasonRad, double depthM, double dampingDepthM) =>
        Wave(seasonRad - (depthM / dampingDepthM), Math.Exp(-depthM / dampingDepthM));

    /// <summary>The usual year from all days of a history (any length, any order of gaps).</summary>
    public static PlaceClimate FromHistory(IReadOnlyList<WeatherDay> days, Place place)
    {
        var months = new MonthSums[12];
        foreach (var day in days)
        {
            months[SeasonAngle.Month(day.Date, place.LatitudeDeg) - 1].Add(day, place.LatitudeDeg);
        }

        var known = months.Count(m => m.Days >= DaysForAMonth);
        var wave = UsualWave.Fit(months.Where(m => m.Days >= DaysForAMonth).Select(m => m.Mean()), place);
        return new PlaceClimate(wave[0], wave[1], wave[2], Aridity(months), UsualRange(months), known);
    }

    private double Wave(double angleRad, double gain) => MeanAirC + (gain * ((CosineC * Math.Cos(angleRad)) + (SineC * Math.Sin(angleRad))));

    private static double UsualRange(MonthSums[] months)
    {
        var known = months.Where(m => m.Days > 0).ToList();
        return known.Count == 0 ? AssumedRangeC : Math.Max(LeastRangeC, known.Average(m => m.RangeC / m.Days));
    }

    /// <summary>From the months known; the fewer were seen, the more drawn toward a humid place.</summary>
    private static double Aridity(MonthSums[] months)
    {
        double rain = 0, evaporation = 0, seen = 0;
        foreach (var month in months.Where(m => m.Days >= DaysForAMonth))
        {
            rain += month.RainMm / month.Days;
            evaporation += month.EvaporationMm / month.Days;
            seen += month.Days / DaysPerMonth;
        }

        var measured = Math.Log(Math.Max(rain, 0.01) / Math.Max(evaporation, 0.01));
        return AssumedAridityLog + ((measured - AssumedAridityLog) * seen / (seen + MonthsForHalfTrust));
    }

    private struct MonthSums
    {
        public int Days;
        public double AirC;
        public double RangeC;
        public double RainMm;
        public double EvaporationMm;
        public double Cosine;
        public double Sine;

        public readonly UsualWave.Month Mean() => new(Cosine / Days, Sine / Days, AirC / Days, Days);

        public void Add(WeatherDay day, double latitudeDeg)
        {
            var angle = SeasonAngle.Rad(day.Date, latitudeDeg);
            Days++;
            AirC += day.AverageC;
            RangeC += day.TmaxC - day.TminC;
            RainMm += day.RainMm;
            EvaporationMm += DailyEvaporation.HargreavesMm(day, latitudeDeg);
            Cosine += Math.Cos(angle);
            Sine += Math.Sin(angle);
        }
    }
}
