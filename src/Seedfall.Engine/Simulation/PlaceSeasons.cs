using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Weather;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation;

/// <summary>
/// The seasons of one place made ready for every patch there: weather by the hour, four seasons side by side, and how far
/// the product's soil temperature lies from the column's for reference ground, which every patch is corrected by.
/// </summary>
public sealed class PlaceSeasons
{
    private PlaceSeasons(IReadOnlyList<SeasonForcing> seasons, IReadOnlyList<SeasonLanes> lanes, PlaceClimate climate, SoilHeatConstants constants)
    {
        (Seasons, Groups, Climate, Constants) = (seasons, lanes, climate, constants);
    }

    /// <summary>By the day, in the order given.</summary>
    public IReadOnlyList<SeasonForcing> Seasons { get; }

    /// <summary>The usual year of the place.</summary>
    public PlaceClimate Climate { get; }

    /// <summary>Fitted numbers.</summary>
    public SoilHeatConstants Constants { get; }

    /// <summary>Days in each season; 0 where there are none.</summary>
    public int Days => Seasons.Count == 0 ? 0 : Seasons[0].Days;

    /// <summary>Four seasons at a time.</summary>
    internal IReadOnlyList<SeasonLanes> Groups { get; }

    /// <summary>Rain and evaporative demand of one season by the hour, run-up left out.</summary>
    public Watering.BedWeather Hours(int season)
    {
        var hours = Groups[season / LaneMath.Width].Season;
        var lane = season % LaneMath.Width;
        var (rain, demand) = (new double[hours.Length], new double[hours.Length]);
        for (var h = 0; h < hours.Length; h++)
        {
            (rain[h], demand[h]) = (hours[h].RainMm.GetElement(lane), hours[h].DemandMm.GetElement(lane));
        }

        return new Watering.BedWeather(rain, demand);
    }

    /// <summary>From the seasons' days; what was not measured is estimated. Throws where the windows differ in length.</summary>
    /// <param name="windows">Run-up and season of each; all of the same lengths.</param>
    /// <param name="place">Where.</param>
    /// <param name="climate">Its usual year.</param>
    /// <param name="inputs">Which fitted models to use.</param>
    /// <param name="constants">Fitted numbers.</param>
    /// <param name="bias">What a thermometer on the place taught, added to the soil of the days it speaks of; null where nothing was read.</param>
    public static PlaceSeasons From(
        IReadOnlyList<SeasonWindow> windows, Place place, PlaceClimate climate, InputSet inputs, SoilHeatConstants constants, SoilBias? bias = null)
    {
        if (windows.Any(w => w.Days.Length != windows[0].Days.Length || w.RunUpDays != windows[0].RunUpDays))
        {
            throw new ArgumentException("seasons of the same length and run-up are needed", nameof(windows));
        }

        var (seasons, lanes) = (new List<SeasonForcing>(windows.Count), new List<SeasonLanes>());
        for (var first = 0; first < windows.Count; first += LaneMath.Width)
        {
            var four = windows.Skip(first).Take(LaneMath.Width).Select(w => w with { Days = DayEstimates.Complete(w.Days, climate, place, constants.Estimates) }).ToArray();
            lanes.Add(FourSeasons(four, place, climate, constants.For(inputs), constants, bias, seasons));
        }

        return new PlaceSeasons(seasons, lanes, climate, constants);
    }

    private static SeasonLanes FourSeasons(
        SeasonWindow[] four, Place place, PlaceClimate climate, FittedModels models, SoilHeatConstants constants, SoilBias? bias, List<SeasonForcing> seasons)
    {
        var hours = four.Select(w => ColumnForcing.FromDaily(w.Days, place)).ToArray();
        var demand = four.Select((w, lane) => SeasonForcing.DemandMm(w.Days, hours[lane].Weather, place)).ToArray();
        var lanes = SeasonLanes.Of(hours, demand, four[0].RunUpDays, place.LatitudeDeg, constants.Column);
        var column = ReferenceSoil.DailyMeanC(lanes, [.. four.Select(w => w.Days)], climate, constants.Column);
        var byDay = new Lanes[lanes.SeasonDays];
        for (var lane = 0; lane < four.Length; lane++)
        {
            var season = Corrected(four[lane], place, climate, models, bias, [.. column.Select(c => c.GetElement(lane))]);
            seasons.Add(season);
            for (var d = 0; d < byDay.Length; d++)
            {
                byDay[d] = byDay[d].WithElement(lane, season.CorrectionC[d]);
            }
        }

        lanes.Correct(byDay);
        return lanes;
    }

    private static SeasonForcing Corrected(SeasonWindow window, Place place, PlaceClimate climate, FittedModels models, SoilBias? bias, double[] columnC)
    {
        var rows = SoilMethods.ProductFeatures(window.Days, place, climate, columnC);
        var (product, correction) = (new double[window.SeasonDays], new double[window.SeasonDays]);
        for (var d = 0; d < product.Length; d++)
        {
            var row = rows.AsSpan((window.RunUpDays + d) * SoilMethods.ProductFeatureCount, SoilMethods.ProductFeatureCount);
            product[d] = models.RegressionIsBetter ? models.Regression.At(row[..^1]) : models.Product.At(row);
            product[d] += bias?.AtC(window.Days[window.RunUpDays + d].Date) ?? 0.0;
            correction[d] = product[d] - columnC[window.RunUpDays + d];
        }

        var days = window.Days.AsSpan(window.RunUpDays).ToArray();
        return new SeasonForcing(window.Year, days[0].Date, [.. days.Select(d => d.TminC)], [.. days.Select(d => d.AverageC)], product, correction);
    }
}
