using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;

namespace Seedfall.Planning.Timing;

/// <summary>Past seasons made ready for the simulator; where this season is under way, each begins as this one did.</summary>
internal sealed class SceneWindows
{
    private readonly SeasonScene _scene;
    private readonly SoilTemperatureSeries _soil;
    private readonly int _fromDay;
    private readonly SeasonWindow? _known;

    /// <param name="scene">The season.</param>
    /// <param name="soil">Soil temperature of the past, for the usual year.</param>
    /// <param name="fromDay">First simulated day, counted in the calendar; may be below 0.</param>
    internal SceneWindows(SeasonScene scene, SoilTemperatureSeries soil, int fromDay)
    {
        (_scene, _soil, _fromDay) = (scene, soil, fromDay);
        _known = scene.Season.KnownDays > 0 ? Cut(scene.Calendar, scene.Calendar.Date(scene.Season.KnownDays - 1)) : null;
    }

    internal PlaceSeasons Seasons() => PlaceSeasons.From(
        [.. _scene.Past.Seasons.Select(past => Window(past.Year))], _scene.Place, _soil.Climate, _soil.Inputs, SoilHeatConstants.Shipped, _scene.Season.Corrected?.Bias);

    private SeasonWindow Window(int year)
    {
        var past = Cut(_scene.Calendar.In(year), _scene.Calendar.In(year).Last);
        return _known is null ? past : past.After(_known, _soil.Climate, _scene.Place.LatitudeDeg);
    }

    private SeasonWindow Cut(SeasonCalendar calendar, DateOnly last)
    {
        var first = calendar.Date(_fromDay);
        return SeasonWindow.Cut(_scene.Weather, calendar.Year, first, Later(first, calendar.First), last, _soil.Climate, _scene.Place.LatitudeDeg);
    }

    private static DateOnly Later(DateOnly a, DateOnly b) => a > b ? a : b;
}
