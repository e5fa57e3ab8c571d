using Seedfall.Engine.Atmosphere;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Simulation.Regression;

/// <summary>
/// What the pooled regression looks at on each day: air temperature smoothed over days to months, the season, the place's
/// usual year, clearness of the sky, snow on the ground, and how dry the place is.
/// </summary>
public sealed class RegressionFeatures
{
    private const double ClearShare = 0.75;
    private const double WetDayMm = 1.0;
    private const double UsualWetShare = 0.25;

    private readonly PlaceClimate _climate;
    private readonly double _latitudeDeg;
    private readonly double _aridDeficit;
    private ExponentialMean _air1;
    private ExponentialMean _air4;
    private ExponentialMean _air16;
    private ExponentialMean _air64;
    private ExponentialMean _thawed1;
    private ExponentialMean _thawed4;
    private ExponentialMean _sun4;
    private ExponentialMean _clear4;
    private ExponentialMean _wet10;
    private SnowStore _snow;
    private DateOnly? _last;

    /// <summary>A fresh state for one place; feed it days in order, completed by <see cref="DayEstimates"/>.</summary>
    public RegressionFeatures(PlaceClimate climate, double latitudeDeg)
    {
        (_climate, _latitudeDeg) = (climate, latitudeDeg);
        _aridDeficit = climate.DrynessDeficit;
    }

    /// <summary>Names in the order of the values.</summary>
    public static IReadOnlyList<string> Names { get; } =
    [
        "air", "air1", "air4", "air16", "air64", "placeMean", "seasonCos", "seasonSin", "thawed1", "thawed4",
        "snow", "snowAir4", "dryPlace", "dryPlaceSun4", "clear", "clear4", "wet10",
    ];

    /// <summary>Moves to the next day and writes its values, <see cref="Names"/>.Count of them.</summary>
    public void Next(WeatherDay day, Span<double> values)
    {
        var air = day.AverageC;
        var season = SeasonAngle.Rad(day.Date, _latitudeDeg);
        var extraterrestrial = SolarGeometry.ExtraterrestrialDailyMJ(_latitudeDeg, day.Date.DayOfYear);
        var sun = day.SolarMJ ?? EstimatedSolar.HargreavesSamaniMJ(day.TmaxC, day.TminC, extraterrestrial);
        var clear = extraterrestrial > 0.1 ? Math.Min(1.2, sun / (ClearShare * extraterrestrial)) : 1.0;
        if (_last is null)
        {
            Start(season, sun, clear);
        }

        var step = _last is { } last ? day.Date.DayNumber - last.DayNumber : 1;
        _last = day.Date;
        _snow.Next(air, day.RainMm);
        Write(values, air, season, clear, step, sun);
        values[16] = _wet10.Next(day.RainMm >= WetDayMm ? 1.0 : 0.0, step);
    }

    private void Write(Span<double> values, double air, double season, double clear, int step, double sun)
    {
        values[0] = air;
        values[1] = _air1.Next(air, step);
        values[2] = _air4.Next(air, step);
        values[3] = _air16.Next(air, step);
        values[4] = _air64.Next(air, step);
        values[5] = _climate.MeanAirC;
        values[6] = Math.Cos(season);
        values[7] = Math.Sin(season);
        values[8] = _thawed1.Next(Math.Max(0.0, air), step);
        values[9] = _thawed4.Next(Math.Max(0.0, air), step);
        values[10] = _snow.CoverShare;
        values[11] = _snow.CoverShare * values[2];
        values[12] = _aridDeficit;
        values[13] = _aridDeficit * _sun4.Next(sun, step);
        values[14] = clear;
        values[15] = _clear4.Next(clear, step);
    }

    /// <summary>Begins every smoothed value where the usual year would have left it.</summary>
    private void Start(double season, double sun, double clear)
    {
        _air1 = new(1.0, _climate.SmoothedC(season, 1.0));
        _air4 = new(4.0, _climate.SmoothedC(season, 4.0));
        _air16 = new(16.0, _climate.SmoothedC(season, 16.0));
        _air64 = new(64.0, _climate.SmoothedC(season, 64.0));
        _thawed1 = new(1.0, Math.Max(0.0, _air1.Value));
        _thawed4 = new(4.0, Math.Max(0.0, _air4.Value));
        _sun4 = new(4.0, sun);
        _clear4 = new(4.0, clear);
        _wet10 = new(10.0, UsualWetShare);
    }
}
