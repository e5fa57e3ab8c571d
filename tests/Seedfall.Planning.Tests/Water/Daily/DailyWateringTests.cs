using Seedfall.Engine.Simulation;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Water.Daily;

/// <summary>Each day's watering on the invented lawn in invented weather.</summary>
public sealed class DailyWateringTests
{
    private static readonly DateOnly Down = new(2023, 8, 20);

    private static readonly WeatherHistory Past = Invented.Weather with { Days = [.. Invented.Weather.Days.Where(d => d.Date < Down.AddDays(-DailyPlace.DaysBefore))] };

    private static readonly DailyPlace Place = DailyPlace.Of(Past, InventedWeather.North, Down);

    private static readonly DailySet[] Sets = [new("front", 12.7, 1.25, 200.0), new("side", 30.0, 1.4, 90.0)];

    private static readonly PatchConditions Ground = new() { Texture = SoilTexture.Loam, TurfShare = 0.3, SeedDepthMm = 4.0 };

    [Fact]
    public void DryDaysAskForWaterAndARainyDayDoesNot()
    {
        var dry = DailyWatering.Today(Scene(6, rainMm: 0.0, log: Water(0.5, 0)));
        Assert.NotEmpty(dry.Rounds);
        Assert.StartsWith("Water ", dry.Sentence, StringComparison.Ordinal);
        var wet = DailyWatering.Today(Scene(6, rainMm: 25.0, log: Water(0.5, 0)) with { Ground = Ground with { ShadeShare = 0.5, MulchKgM2 = 0.34, MulchCover = 0.5 } });
        Assert.Empty(wet.Rounds);
        Assert.Contains(wet.Reasons, r => r == "Rain has done today's watering.");
        Assert.StartsWith("No watering today", wet.Sentence, StringComparison.Ordinal);
    }

    [Fact]
    public void MinutesAreWholeAndPutOnNoLessThanTheDepth()
    {
        var scene = Scene(6, rainMm: 0.0, log: Water(0.5, 0));
        var plan = DailyWatering.Today(scene);
        foreach (var round in plan.Rounds)
        {
            Assert.Contains(round.Start.Hour, scene.Starts);
            Assert.Equal(Sets.Select(s => s.Name), round.Runs.Select(r => r.SetName));
            foreach (var (set, run) in Sets.Zip(round.Runs))
            {
                Assert.Equal(Math.Round(run.Minutes.Value), run.Minutes.Value);
                Assert.InRange(run.Minutes.Value * set.RateMmh / 60.0, (round.Depth.Value * set.RunTimeMultiplier) - 1e-9, (round.Depth.Value * set.RunTimeMultiplier) + (set.RateMmh / 60.0));
            }
        }

        Assert.Equal(plan.Week[0].Depth.Value, plan.Rounds.Sum(r => r.Depth.Value), 12);
        Assert.Equal(plan.Week[0].Rounds, plan.Rounds.Count);
        Assert.Equal(7, plan.Week.Count);
        Assert.All(plan.Week, day => Assert.True(day.Depth.Value >= 0.0));
    }

    [Fact]
    public void MoreRainNeverMeansMoreWaterOverTheWeek()
    {
        var last = double.PositiveInfinity;
        foreach (var rainMm in new[] { 0.0, 2.0, 4.0, 8.0, 16.0, 32.0 })
        {
            var water = DailyWatering.Today(Scene(6, rainMm, Water(0.5, 0))).Week.Sum(d => d.Depth.Value);
            Assert.True(water <= last + 0.25, $"{water} mm after {rainMm} mm of rain, {last} after less");
            last = water;
        }
    }

    [Fact]
    public void AForecastOfRainSparesToday()
    {
        var scene = Scene(6, rainMm: 0.0, log: Water(0.5, 0));
        WeatherDay[] ahead = [.. Enumerable.Range(0, 3).Select(d => new WeatherDay(scene.Today.AddDays(d), 20.0, 14.0, 30.0) { Quality = DayQuality.Forecast })];
        var told = DailyWatering.Today(scene with { Weather = scene.Weather with { Days = [.. scene.Weather.Days, .. ahead] } });
        Assert.True(told.Rounds.Sum(r => r.Depth.Value) < DailyWatering.Today(scene).Rounds.Sum(r => r.Depth.Value));
        Assert.Contains(told.Warnings, w => w.Id.EndsWith(".washing", StringComparison.Ordinal));
        Assert.Equal([true, true, true, false, false, false, false], told.Week.Select(d => d.Forecast));
    }

    [Fact]
    public void FingerTestsMoveTheGroundAndOneAloneSettlesNothing()
    {
        double Factor(params LogEntry[] entries) => DailyWatering.Today(Scene(6, 0.0, [.. Water(2.0, 2, 7, 15), .. entries])).Figures.Single(f => f.Id.EndsWith(".thirst", StringComparison.Ordinal)).Value;
        Assert.Equal(1.0, Factor());
        var dry = Factor(Finger(FingerFelt.TooDry, 4));
        var driest = Factor(Finger(FingerFelt.TooDry, 2), Finger(FingerFelt.TooDry, 3), Finger(FingerFelt.TooDry, 4), Finger(FingerFelt.TooDry, 5));
        var soggy = Factor(Finger(FingerFelt.Soggy, 4));
        Assert.InRange(dry, 1.0, 1.5);
        Assert.True(driest > dry);
        Assert.InRange(soggy, 0.7, 1.0);
    }

    [Fact]
    public void AMissedWateringIsToldByHowFarGerminationGot()
    {
        var scene = Scene(12, 0.0, Water(0.2, 0)) with { Ground = Ground with { SeedDepthMm = 1.0 } };
        var early = DailyWatering.Today(scene);
        Assert.Contains("dry seed waits", early.Warnings.Single(w => w.Id.EndsWith(".missed", StringComparison.Ordinal)).Statement, StringComparison.Ordinal);
        var late = DailyWatering.Today(scene with { Grass = scene.Grass with { HydrothermalTimeMPaCd = 1.0 } });
        Assert.Contains("roots are out", late.Warnings.Single(w => w.Id.EndsWith(".missed", StringComparison.Ordinal)).Statement, StringComparison.Ordinal);
        Assert.NotEmpty(late.Rounds);
    }

    [Fact]
    public void WhatWasGivenCountsAndWhereNothingIsWrittenItIsSaid()
    {
        var silent = DailyWatering.Today(Scene(6, 0.0, []));
        Assert.Contains(silent.Assumptions, a => a.Id.EndsWith(".given", StringComparison.Ordinal));
        var plan = DailyWatering.Today(Scene(6, 0.0, Water(5.0, 5, 7)) with { PricePerThousandGallons = 5m });
        Assert.Empty(plan.Assumptions);
        var used = plan.Figures.Single(f => f.Id.EndsWith(".used", StringComparison.Ordinal)).Value;
        var saved = plan.Figures.Single(f => f.Id.EndsWith(".saved", StringComparison.Ordinal)).Value;
        Assert.Equal((30.0 + plan.Rounds.Sum(r => r.Depth.Value)) * 290.0, used, 6);
        Assert.Equal(7 * 3 * 2.54 * 290.0, used + saved, 6);
        Assert.Equal(used / 3.785411784 / 1000.0 * 5.0, plan.Figures.Single(f => f.Id.EndsWith(".cost", StringComparison.Ordinal)).Value, 6);
        Assert.Equal(plan.Figures.Select(f => f.Id).Distinct().Count(), plan.Figures.Count);
    }

    [Fact]
    public void MinutesRunAndARainGaugeAreBelieved()
    {
        double Suction(params LogEntry[] entries) => DailyWatering.Today(Scene(6, 0.0, [.. Water(0.5, 0), .. entries])).Figures.Single(f => f.Id.EndsWith(".suction", StringComparison.Ordinal)).Value;
        var none = Suction();
        Assert.True(Suction(new LogEntry.Rained(Depth.FromMillimeters(15.0)) { Id = Guid.NewGuid(), At = At(5, 20) }) < none);
        Assert.True(Suction(new LogEntry.Watered { Id = Guid.NewGuid(), At = At(5, 18), Set = "front", Minutes = 60.0 }) < none);
        Assert.Equal(none, Suction(new LogEntry.Watered { Id = Guid.NewGuid(), At = At(5, 18), PatchId = "elsewhere", Minutes = 60.0 }));
    }

    /// <summary>Dry days before seed-down and since, but yesterday's rain.</summary>
    private static DailyScene Scene(int day, double rainMm, LogEntry[] log)
    {
        var today = Down.AddDays(day);
        var days = Enumerable.Range(0, DailyPlace.DaysBefore + day).Select(d => Down.AddDays(d - DailyPlace.DaysBefore))
            .Select(date => new WeatherDay(date, 28.0, 15.0, date == today.AddDays(-1) ? rainMm : date == Down.AddDays(-2) ? 20.0 : 0.0));
        return new DailyScene(
            Place, "front", Ground, Sets, [7, 11, 15], 2.54, SpeciesTraits.Germination(Invented.Tables.For(GrassSpecies.TallFescue)), Down, today, InventedWeather.Of(days), FieldLog.Of(log));
    }

    private static LogEntry[] Water(double mm, int lastDay, params int[] hours) =>
        [.. Enumerable.Range(0, lastDay + 1).SelectMany(day => (hours.Length == 0 ? [7] : hours).Select(hour => (LogEntry)new LogEntry.Watered { Id = Guid.NewGuid(), At = At(day, hour), Given = Depth.FromMillimeters(mm) }))];

    private static LogEntry.FingerTest Finger(FingerFelt felt, int day) => new(felt) { Id = Guid.NewGuid(), At = At(day, 14) };

    private static DateTimeOffset At(int day, int hour) => new(Down.AddDays(day).ToDateTime(new TimeOnly(hour, 0)), TimeSpan.FromHours(-5));
}
