namespace Seedfall.Engine.Validation.Watering;

/// <summary>One way of watering over some seasons: means.</summary>
/// <param name="DryHours">Hours a season.</param>
/// <param name="MostDryHours">Hours of the worst season.</param>
/// <param name="ShortHours">Hours a season drier than wanted.</param>
/// <param name="TooWetHours">Hours a season.</param>
/// <param name="WaterMm">mm a season.</param>
/// <param name="RunoffMm">mm a season.</param>
/// <param name="DrainageMm">mm a season.</param>
/// <param name="UpShare">Live seed up and alive at the end.</param>
/// <param name="EmergenceDays">Over the seasons in which half the seed came up; null where in none.</param>
/// <param name="NeverUp">Seasons in which it did not.</param>
public sealed record WayScore(
    double DryHours, double MostDryHours, double ShortHours, double TooWetHours, double WaterMm, double RunoffMm, double DrainageMm, double UpShare, double? EmergenceDays, int NeverUp)
{
    /// <summary>Means of at least one season.</summary>
    public static WayScore Of(IReadOnlyList<WateringSeason> seasons)
    {
        var up = seasons.Select(s => s.EmergenceDays).OfType<double>().ToList();
        return new WayScore(
            seasons.Average(s => s.DryHours),
            seasons.Max(s => s.DryHours),
            seasons.Average(s => s.ShortHours),
            seasons.Average(s => s.TooWetHours),
            seasons.Average(s => s.WaterMm),
            seasons.Average(s => s.RunoffMm),
            seasons.Average(s => s.DrainageMm),
            seasons.Average(s => s.UpShare),
            up.Count > 0 ? up.Average() : null,
            seasons.Count - up.Count);
    }
}

/// <summary>Every way of watering at one station on one soil, or pooled.</summary>
/// <param name="Station">Name; <c>pooled</c> for all.</param>
/// <param name="Seasons">Seasons tried.</param>
/// <param name="Ways">By name in <see cref="WateringWays"/>.</param>
/// <param name="Notes">What was left out and why.</param>
public sealed record WateringScore(string Station, int Seasons, IReadOnlyDictionary<string, WayScore> Ways, IReadOnlyList<string> Notes)
{
    /// <summary>Water of the daily plan over the textbook rounds'.</summary>
    public double OfTextbook => Ways[WateringWays.Daily].WaterMm / Ways[WateringWays.Textbook].WaterMm;

    /// <summary>Water of the daily plan over the least found at the same hours; null where none was needed.</summary>
    public double? OfLeast => Ways[WateringWays.Least].WaterMm > 0.0 ? Ways[WateringWays.Daily].WaterMm / Ways[WateringWays.Least].WaterMm : null;

    /// <summary>Dry hours no more than with the textbook rounds.</summary>
    public bool NoDrier => Ways[WateringWays.Daily].DryHours <= Ways[WateringWays.Textbook].DryHours;

    /// <summary>At least three tenths less water than the textbook rounds.</summary>
    public bool SavesThreeTenths => OfTextbook <= 0.7;

    /// <summary>At most a quarter more water than the least found.</summary>
    public bool NearLeast => OfLeast is null or <= 1.25;

    /// <summary>Means over the seasons of some stations, at least one season in all.</summary>
    public static WateringScore Of(string name, IReadOnlyList<IReadOnlyDictionary<string, WateringSeason>> seasons) =>
        new(name, seasons.Count, WateringWays.All.ToDictionary(way => way, way => WayScore.Of([.. seasons.Select(s => s[way])])), []);
}
