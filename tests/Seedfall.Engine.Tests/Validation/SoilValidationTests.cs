using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Validation;

/// <summary>The scorer on invented stations.</summary>
public sealed class SoilValidationTests
{
    private static readonly Place Somewhere = new(42.0, -90.0, 250.0);

    [Fact]
    public void BaselinesOfAPureWaveAreWhatTheyMustBe()
    {
        var days = Days(5, (_, mean) => mean);
        var use = MeasuredSoil.ScoredDays(days, 42.0, out var stuck);
        Assert.Equal(0, stuck);
        Assert.All(days.Select((d, i) => (d, i)), x => Assert.Equal(x.d.Date.Month is >= 8 and <= 11, use[x.i]));

        // Every year is alike, so the other years' week is the day itself within the wave's curvature and leap days.
        var climatology = SoilBaselines.ClimatologyOfOtherYears(days, use);
        var september = Array.FindIndex(days, d => d.Date == new DateOnly(2012, 9, 15));
        Assert.Equal(days[september].Soil5CmC!.Value, climatology[september]!.Value, 0.2);
        Assert.Null(climatology[Array.FindIndex(days, d => d.Date.Month == 6)]);
    }

    [Fact]
    public void AStuckProbeIsLeftOutAndNamed()
    {
        var days = Days(5, (date, mean) => date is { Year: 2012, Month: 9, Day: >= 3 and <= 20 } ? 17.0 : mean);
        var report = SoilValidation.Score([new WeatherHistory(Somewhere, "invented", days, [], [])], SoilHeatConstants.Shipped);
        var note = Assert.Single(report.Stations[0].Notes);
        Assert.Contains("18 days left out", note, StringComparison.Ordinal);
        Assert.Contains("17 degC from 2012-09-03 to 2012-09-20", note, StringComparison.Ordinal);
        Assert.Equal((5 * 122) - 18, report.Pooled.Methods[SoilScoreMethods.Product].N);
    }

    [Fact]
    public void SoilThatHoldsStillAtFreezingOrForLessThanAWeekIsNotStuck()
    {
        var days = Days(2, (date, mean) => date switch
        {
            { Year: 2010, Month: 11 } => 0.2,
            { Year: 2011, Month: 9, Day: <= 6 } => 17.0,
            { Year: 2011, Month: 10, Day: <= 9 } => date.Day == 5 ? null : 12.0,
            _ => mean,
        });
        Assert.Empty(MeasuredSoil.StuckRuns(days));
        Assert.Equal((2 * 122) - 1, MeasuredSoil.ScoredDays(days, 42.0, out _).Count(used => used));
    }

    [Fact]
    public void AStationWithoutSoilOrPositionIsListedWithTheReason()
    {
        var bare = Days(2, (_, _) => null);
        var report = SoilValidation.Score(
            [new WeatherHistory(Somewhere, "no soil", bare, [], []), new WeatherHistory(null, "nowhere", bare, [], [])],
            SoilHeatConstants.Shipped);
        Assert.Contains("no measured soil", report.Stations[0].Notes[0], StringComparison.Ordinal);
        Assert.Contains("no position", report.Stations[1].Notes[0], StringComparison.Ordinal);
        Assert.Empty(report.Pooled.Methods);
    }

    [Fact]
    public void EveryMethodIsScoredOnTheSameDaysByStationAndPooled()
    {
        var report = SoilValidation.Score([new WeatherHistory(Somewhere, "invented", Days(5, (_, mean) => mean + 1.0), [], [])], SoilHeatConstants.Shipped);
        foreach (var method in SoilScoreMethods.All)
        {
            var errors = report.Stations[0].Methods[method];
            Assert.Equal(610, errors.N);
            Assert.Equal(errors, report.Pooled.Methods[method]);
            Assert.True(errors.Mae <= errors.Rmse && Math.Abs(errors.Bias) <= errors.Mae);
        }
    }

    [Fact]
    public void CrossingsOfAPerfectPredictionHaveNoError()
    {
        var days = Days(3, (_, mean) => mean);
        var use = MeasuredSoil.ScoredDays(days, 42.0, out _);
        var predicted = days.Select(d => d.Soil5CmC!.Value).ToArray();
        var crossings = CrossingScore.Seasons(days, predicted, use, 42.0, 15.0);
        Assert.Equal(3, crossings.Count);
        Assert.All(crossings, c => Assert.Equal(c.ObservedDay, c.PredictedDay));
    }

    [Fact]
    public void ReadingsRemoveMostOfASteadyOffset()
    {
        var days = Days(3, (_, mean) => mean + 1.0);
        var use = MeasuredSoil.ScoredDays(days, 42.0, out _);
        var (without, with) = (new ErrorTally(), new ErrorTally());
        ReadingScore.Add(days, [.. days.Select(d => d.Soil5CmC!.Value - 1.0)], use, 42.0, without, with);
        Assert.Equal(1.0, without.Summary()!.Mae, 1e-9);
        Assert.InRange(with.Summary()!.Mae, 0.2, 0.6);
    }

    [Fact]
    public void ADressedEnsembleOfOneMemberIsANormal()
    {
        var ensemble = new DressedEnsemble([10.0], 2.0);
        Assert.Equal(0.5, ensemble.ChanceBelow(10.0), 1e-12);
        Assert.Equal(10.0 + (2.0 * 1.959964), ensemble.Quantile(0.975), 2e-3);
        Assert.True(ensemble.Holds(12.0, 0.8));
        Assert.False(ensemble.Holds(13.0, 0.8));
    }

    /// <summary>Invented years of an annual wave of 9 +- 12 degC from 2010 on, soil as asked.</summary>
    private static WeatherDay[] Days(int years, Func<DateOnly, double, double?> soil)
    {
        var first = new DateOnly(2010, 1, 1);
        return [.. Enumerable.Range(0, first.AddYears(years).DayNumber - first.DayNumber).Select(i =>
        {
            var date = first.AddDays(i);
            var mean = 9.0 + (12.0 * Math.Cos(2.0 * Math.PI / 365.25 * (date.DayOfYear - 201)));
            return new WeatherDay(date, mean + 5.0, mean - 5.0, i % 4 == 0 ? 10.0 : 0.0) { Soil5CmC = soil(date, mean) };
        })];
    }
}
