using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Fit;

/// <summary>A forecast of one season's crossing date from other years' weather, beside what happened.</summary>
/// <param name="ThresholdF">degF.</param>
/// <param name="Members">Crossing dates computed with other years' weather, days from 1 August.</param>
/// <param name="OtherObserved">The station's measured crossing dates of other years.</param>
/// <param name="Observed">The season's own.</param>
internal sealed record CrossingForecast(double ThresholdF, IReadOnlyList<double> Members, IReadOnlyList<double> OtherObserved, double Observed)
{
    private const int LeastMembers = 8;
    private const int LeastOtherObserved = 5;
    private static readonly int[] Thresholds = [70, 65, 60, 55];

    /// <summary>
    /// Forecasts on a day of each measured season: weather as measured up to it, then each other year's weather from the
    /// same calendar day. Seasons that have crossed by then are left out.
    /// </summary>
    internal static IReadOnlyList<CrossingForecast> Of(WeatherHistory station, SoilHeatConstants constants, IReadOnlyDictionary<double, IReadOnlyList<SeasonCrossing>> measured, int issueMonth, int issueDay)
    {
        var place = station.Station!;
        var climate = PlaceClimate.FromHistory(station.Days, place);
        var seasons = station.Years
            .Where(y => y >= 2005)
            .Select(y => (Year: y, Days: station.Span(new DateOnly(y, 4, 1), new DateOnly(y, 11, 30))))
            .Where(s => s.Days is not null)
            .ToList();
        var forecasts = new List<CrossingForecast>();
        foreach (var (year, days) in seasons.Where(s => measured.Values.Any(list => list.Any(m => m.Year == s.Year))))
        {
            var issue = new DateOnly(year, issueMonth, issueDay).DayNumber - days![0].Date.DayNumber;
            var runs = seasons.Where(s => s.Year != year).Select(s => Run(Spliced(days, s.Days!, issue), place, climate, constants)).ToList();
            foreach (var threshold in Thresholds)
            {
                var list = measured[threshold];
                var own = list.Where(m => m.Year == year).ToList();
                var others = list.Where(m => m.Year != year).Select(m => (double)m.ObservedDay).ToList();
                if (own.Count == 1 && own[0].ObservedDay > issue - AugustFirst && runs.Count >= LeastMembers && others.Count >= LeastOtherObserved)
                {
                    var members = runs.Select(r => (double)(SoilCrossing.FirstFallBelow(r, (threshold - 32.0) / 1.8, 0) ?? r.Length)).ToList();
                    forecasts.Add(new CrossingForecast(threshold, members, others, own[0].ObservedDay));
                }
            }
        }

        return forecasts;
    }

    /// <summary>Index of 1 August in days from 1 April.</summary>
    private const int AugustFirst = 122;

    private static WeatherDay[] Spliced(IReadOnlyList<WeatherDay> own, IReadOnlyList<WeatherDay> other, int issue) =>
        [.. own.Select((day, d) => d < issue ? day : other[d] with { Date = day.Date })];

    private static double[] Run(WeatherDay[] days, Place place, PlaceClimate climate, SoilHeatConstants constants) =>
        SoilMethods.At5Cm(days, place, climate, InputSet.Full, constants).ProductC[AugustFirst..];
}

/// <summary>How honest the forecasts' chances were.</summary>
/// <param name="Count">Forecasts.</param>
/// <param name="Hit50">Share of seasons inside the central half.</param>
/// <param name="Hit80">Inside the central 80 %.</param>
/// <param name="Hit90">Inside the central 90 %.</param>
/// <param name="Crps">Ranked probability score, days.</param>
/// <param name="UsualCrps">The same of the station's own other years, days.</param>
/// <param name="BrierSkill">Skill over the station's other years for having crossed by their median.</param>
internal sealed record CrossingReliability(int Count, double Hit50, double Hit80, double Hit90, double Crps, double UsualCrps, double BrierSkill)
{
    internal static CrossingReliability Of(IReadOnlyList<CrossingForecast> forecasts, double modelDays)
    {
        var dressed = forecasts.Select(f => (Forecast: f, Ensemble: new DressedEnsemble(f.Members, modelDays))).ToList();
        double Hit(double coverage) => dressed.Average(d => d.Ensemble.Holds(d.Forecast.Observed, coverage) ? 1.0 : 0.0);
        var chances = dressed.Select(d => d.Ensemble.ChanceBelow(Median(d.Forecast) + 0.5)).ToArray();
        var usual = forecasts.Select(f => f.OtherObserved.Average(o => o <= Median(f) ? 1.0 : 0.0)).ToArray();
        var happened = forecasts.Select(f => f.Observed <= Median(f)).ToArray();
        return new CrossingReliability(
            forecasts.Count,
            Hit(0.5),
            Hit(0.8),
            Hit(0.9),
            dressed.Average(d => RankedProbabilityScore.Ensemble(Quantiles(d.Ensemble), d.Forecast.Observed)),
            forecasts.Average(f => RankedProbabilityScore.FairEnsemble([.. f.OtherObserved], f.Observed)),
            BrierScore.Skill(BrierScore.Of(chances, happened), BrierScore.Of(usual, happened)));
    }

    private static double Median(CrossingForecast forecast)
    {
        var sorted = forecast.OtherObserved.Order().ToList();
        return sorted[sorted.Count / 2];
    }

    private static double[] Quantiles(DressedEnsemble ensemble) => [.. Enumerable.Range(0, 40).Select(i => ensemble.Quantile((i + 0.5) / 40.0))];
}
