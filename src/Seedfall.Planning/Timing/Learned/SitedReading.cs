using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Timing;

/// <summary>A thermometer reading of the season, by local standard time, with the ground it was taken in.</summary>
internal sealed record SitedReading(ProbeReading Reading, SoilTempSite Site)
{
    /// <summary>The season's readings, oldest first.</summary>
    internal static IReadOnlyList<SitedReading> Of(Lawn lawn, FieldLog log, SeasonCalendar calendar)
    {
        var seeded = log.During<LogEntry.SeededDown>(calendar.First, calendar.Last).FirstOrDefault()?.Day;
        return [.. log.During<LogEntry.SoilReading>(calendar.First, calendar.Last).Select(entry => new SitedReading(Standard(entry, lawn), GroundOf(entry, lawn, seeded)))];
    }

    /// <summary>Weather days and the column's hours keep standard time, which the longitude gives to the half hour.</summary>
    private static ProbeReading Standard(LogEntry.SoilReading entry, Lawn lawn)
    {
        var local = entry.At.UtcDateTime.AddHours(Math.Round(lawn.Place.LongitudeDeg / 15.0, MidpointRounding.AwayFromZero));
        return entry.HourKnown
            ? new ProbeReading(DateOnly.FromDateTime(local), local.TimeOfDay.TotalHours, entry.Depth, entry.Read)
            : new ProbeReading(entry.Day, null, entry.Depth, entry.Read);
    }

    private static SoilTempSite GroundOf(LogEntry entry, Lawn lawn, DateOnly? seeded)
    {
        var texture = TextureTable.For(lawn.Soil?.Texture ?? SoilTexture.Loam);
        var patch = lawn.Patches.FirstOrDefault(p => p.Id == entry.PatchId);
        return SoilTempSite.Reference with
        {
            Sand = texture.Sand,
            Clay = texture.Clay,
            Shade = Fraction.Of(patch?.SunHours is { } sun ? SeedbedGround.Shade(sun) : 0.0),
            Irrigated = seeded is { } day && entry.Day >= day,
        };
    }
}
