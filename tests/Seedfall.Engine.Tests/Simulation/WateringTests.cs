using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Plant;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;

namespace Seedfall.Engine.Tests.Simulation;

/// <summary>Water decided by the hour, the least of it, and what is expected of the sky; all on invented weather.</summary>
public sealed class WateringTests
{
    private static readonly int[] ThreeRounds = [7, 11, 15];

    private static readonly SoilTexture[] Soils = [SoilTexture.Sand, SoilTexture.Loam, SoilTexture.Clay];

    private static readonly GerminationTraits Grass = new(3.6, 20.0, 27.0, 40.0, 77.0, -1.2, 0.35, 100.0);

    public static TheoryData<SoilTexture> EachSoil => [.. Soils];

    [Theory]
    [MemberData(nameof(EachSoil))]
    public void WaterClosesWhateverIsGiven(SoilTexture texture)
    {
        var (bed, sky, random) = (new WateredBed(Ground(texture)), Sky(20, 1), new SplitMix64(5));
        for (var hour = 0; hour < sky.Hours; hour++)
        {
            var (before, given) = (bed.TotalMm, random.NextDouble() < 0.1 ? 15.0 * random.NextDouble() : 0.0);
            var losses = bed.Step(sky, hour, given);
            Assert.Equal(before + sky.RainMm[hour] + given, bed.TotalMm + losses.EvaporationMm + losses.RunoffMm + losses.DrainageMm, 9);
            Assert.True(losses.EvaporationMm >= 0.0 && losses.RunoffMm >= 0.0 && losses.DrainageMm >= 0.0);
        }
    }

    [Fact]
    public void FixedRoundsDecidedDayByDayAreThoseOfTheSeasonsSimulation()
    {
        var (seasons, ground) = (Seasons(), Ground(SoilTexture.Loam));
        var rounds = new WateringRounds([7, 15], 1.0, double.PositiveInfinity);
        var simulation = new SeasonSimulation(ground, seasons.Constants.Column, [Grass], 40);
        simulation.Run(seasons.Groups[0], seasons.Climate, rounds, 10, 30, 40);
        var given = new List<double[]>();
        for (var season = 0; season < 4; season++)
        {
            var outcome = WateringTrial.Run(ground, seasons.Hours(season), [], 10, 30, new Hold(-0.1, false), WateringTrial.Fixed(rounds));
            Assert.Equal(simulation.DryHours.GetElement(season), outcome.DryHours);
            Assert.Equal(simulation.IrrigationMm.GetElement(season), outcome.WaterMm, 9);
            Assert.InRange(outcome.DryHours, 0, outcome.ShortHours);
            given.Add(outcome.IrrigationMm);
        }

        var fates = Enumerable.Range(0, 4).Select(season => simulation.Plants[0].Fate(season, 4, 24 * 10, 24 * 40, 4.0)).ToList();
        var lanes = Enumerable.Range(0, 24 * 40).Select(h => Vector256.Create(given[0][h], given[1][h], given[2][h], given[3][h])).ToArray();
        simulation.Run(seasons.Groups[0], seasons.Climate, lanes, 10, 40);
        Assert.Equal(fates, Enumerable.Range(0, 4).Select(season => simulation.Plants[0].Fate(season, 4, 24 * 10, 24 * 40, 4.0)));
        Assert.All(WateredStand.Run(seasons, ground, [new(Grass, 1.0)], [.. given, .. given], 10, 40), up => Assert.InRange(up.UpShare, 0.0, 1.0));
    }

    [Theory]
    [MemberData(nameof(EachSoil))]
    public void TheLeastDepthHoldsAndAHundredthOfTheMostLessDoesNot(SoilTexture texture)
    {
        var (bed, sky, hold) = (Drained(texture, 3), Hot(6), new Hold(-0.1, false));
        Assert.NotNull(bed.DriesAt(sky, 79, 87, hold));
        var least = bed.LeastMm(sky, 79, 87, hold, 12.0)!.Value;
        Assert.True(Lasts(bed, sky, 79, 87, hold, least));
        Assert.False(Lasts(bed, sky, 79, 87, hold, least - 0.12));
        Assert.Null(bed.LeastMm(sky, 79, 87, hold, Math.Max(0.0, least - 0.12)));
    }

    [Theory]
    [MemberData(nameof(EachSoil))]
    public void WhatTheSoilTakesDoesNotRunOff(SoilTexture texture)
    {
        var steep = Ground(texture) with { SlopePercent = 12.0, MulchCover = 0.0, MulchKgM2 = 0.0 };
        var (bed, sky) = (new WateredBed(steep), Hot(1));
        var most = bed.MostTakenMm(sky, 8, 200.0);
        Assert.Equal(0.0, bed.Copy().Step(sky, 8, most).RunoffMm);
        Assert.True(most >= 199.0 || bed.Copy().Step(sky, 8, most + 1.0).RunoffMm > 0.0);
        Assert.True(most <= new WateredBed(steep with { SlopePercent = 0.0 }).MostTakenMm(sky, 8, 200.0));
    }

    /// <summary>Three rounds of a hot day: every plan of a grid of 0.25 mm is tried on the same six layers.</summary>
    [Theory]
    [MemberData(nameof(EachSoil))]
    public void NoPlanOfAFineGridTakesLess(SoilTexture texture)
    {
        var (bed, sky, hold) = (Drained(texture, 3), Hot(6), new Hold(-0.1, false));
        var (from, until) = (24 * 3, (24 * 4) + 7);
        var plan = LeastWater.Plan(bed, sky, from, until, new RoundLimits(ThreeRounds, hold));
        Assert.True(plan.Sum() > 0.5);
        Assert.True(HoldsFrom(bed, sky, from, until, hold, plan));
        var (best, given) = (double.PositiveInfinity, new double[until]);
        for (var total = 0; total < 40 && double.IsInfinity(best); total++)
        {
            for (var a = 0; a <= total; a++)
            {
                for (var b = 0; a + b <= total; b++)
                {
                    (given[from + 7], given[from + 11], given[from + 15]) = (0.25 * a, 0.25 * b, 0.25 * (total - a - b));
                    best = HoldsFrom(bed, sky, from, until, hold, given) ? 0.25 * total : best;
                }
            }
        }

        Assert.True(plan.Sum() <= best + 1e-9, $"found {plan.Sum()}, the grid {best}");
        Assert.True(plan.Sum() >= best - 0.75, $"found {plan.Sum()}, the grid {best}");
    }

    /// <summary>
    /// The linear program on the water balance made linear around the plan: least sum of depths with the layer held in every hour,
    /// solved by trying all its corners.
    /// </summary>
    [Theory]
    [MemberData(nameof(EachSoil))]
    public void TheLinearProgramAgrees(SoilTexture texture)
    {
        var (bed, sky, hold) = (Drained(texture, 3), Hot(6), new Hold(-0.1, false));
        var (from, until, rounds) = (24 * 3, (24 * 4) + 7, ThreeRounds.Select(h => (24 * 3) + h).ToArray());
        var plan = LeastWater.Plan(bed, sky, from, until, new RoundLimits(ThreeRounds, hold));
        double[] Suctions(double[] given) => Trace(bed, sky, from, until, given);
        var (at, dry) = (Suctions(plan), Math.Log(-hold.SeedMPa));
        var slopes = rounds.Select(round =>
        {
            var more = (double[])plan.Clone();
            more[round] += 0.02;
            return Suctions(more).Zip(at, (a, b) => (a - b) / 0.02).ToArray();
        }).ToArray();

        // Rows a x <= b: layer held in each hour after the first round, depths not negative, no step above 0.4 mm.
        var rows = new List<(double[] A, double B)>();
        for (var h = 7; h < at.Length; h++)
        {
            rows.Add(([.. slopes.Select(s => s[h])], Math.Max(0.0, dry - at[h])));
        }

        for (var k = 0; k < 3; k++)
        {
            rows.Add(([.. Enumerable.Range(0, 3).Select(i => i == k ? -1.0 : 0.0)], Math.Min(0.4, plan[rounds[k]])));
            rows.Add(([.. Enumerable.Range(0, 3).Select(i => i == k ? 1.0 : 0.0)], 0.4));
        }

        Assert.InRange(CornerProgram.Least(rows), -0.05 * plan.Sum(), 1e-6);
    }

    [Fact]
    public void MoreRainNeverMeansMoreWater()
    {
        var random = new SplitMix64(11);
        for (var i = 0; i < 60; i++)
        {
            var (texture, sky) = (Soils[i % 3], Sky(10, (ulong)(100 + i)));
            var rainier = sky with { RainMm = [.. sky.RainMm.Select(mm => random.NextDouble() < 0.05 ? mm + (4.0 * random.NextDouble()) : mm)] };
            var limits = new RoundLimits(ThreeRounds, new Hold(-0.1, true));
            double Water(BedWeather s) => LeastWater.Plan(new WateredBed(Ground(texture)), s, 0, s.Hours, limits).Sum();
            var (with, without) = (Water(rainier), Water(sky));
            Assert.True(with <= (1.02 * without) + 0.1, $"{texture}: {with} mm with more rain, {without} without");
            Assert.True(with >= 0.0);
        }
    }

    [Fact]
    public void TheDaysRoundsAreNeverLighterThanTheLightestNorFallElsewhere()
    {
        var settings = new DailySettings();
        var limits = settings.Limits(ThreeRounds, -0.1, 0.2);
        for (var i = 0; i < 30; i++)
        {
            var sky = Sky(6, (ulong)i);
            var bed = WateringTrial.Start(Ground(Soils[i % 3]), sky, [], 4);
            var given = LeastWater.Day(bed, sky, 4, limits);
            Assert.Equal(24, given.Length);
            Assert.All(given.Select((mm, hour) => (mm, hour)), g => Assert.True(g.mm == 0.0 || (g.mm >= settings.LeastMm && ThreeRounds.Contains(g.hour))));
        }
    }

    [Fact]
    public void WhatIsExpectedKnowsNothingOfWhatComes()
    {
        var expected = new ExpectedSky([Sky(10, 1), Sky(10, 2)]);
        var (one, other) = (Sky(10, 3), Sky(10, 4));
        for (var h = 0; h < 24 * 5; h++)
        {
            (other.RainMm[h], other.DemandMm[h]) = (one.RainMm[h], one.DemandMm[h]);
        }

        var ahead = expected.Ahead(one, 5, 0, 3, 1.0);
        Assert.Equal(24 * 8, ahead.Hours);
        Assert.Equal(ahead.DemandMm, expected.Ahead(other, 5, 0, 3, 1.0).DemandMm);
        Assert.All(ahead.RainMm[(24 * 5)..], mm => Assert.Equal(0.0, mm));
        Assert.Equal(one.RainMm[..(24 * 7)], expected.Ahead(one, 5, 2, 3, 1.0).RainMm[..(24 * 7)]);
        Assert.InRange(expected.RainChance, 0.0, 1.0);
    }

    private static PatchConditions Ground(SoilTexture texture) => new() { Texture = texture, TurfShare = 0.2, SeedDepthMm = 4.0, MulchKgM2 = 0.34, MulchCover = 0.5 };

    /// <summary>Clear days of 4.5 mm.</summary>
    private static BedWeather Hot(int days) => new(new double[24 * days], [.. Enumerable.Range(0, 24 * days).Select(h => Sun(h % 24) * 4.5)]);

    /// <summary>Invented days: 0.7 to 4.5 mm of demand, rain on three in ten.</summary>
    private static BedWeather Sky(int days, ulong seed)
    {
        var (random, sky) = (new SplitMix64(seed), Hot(days));
        for (var day = 0; day < days; day++)
        {
            var (factor, wet, rain) = (0.15 + (0.85 * random.NextDouble()), random.NextDouble() < 0.3, 3.0 * random.NextDouble());
            for (var h = 24 * day; h < 24 * (day + 1); h++)
            {
                sky.DemandMm[h] *= factor;
                sky.RainMm[h] = wet && h % 24 is > 1 and < 6 ? rain : 0.0;
            }
        }

        return sky;
    }

    private static double Sun(int hour) => hour is > 6 and < 19 ? Math.Sin(Math.PI * (hour - 6) / 13.0) * Math.PI / 26.0 : 0.0;

    private static WateredBed Drained(SoilTexture texture, int days) => WateringTrial.Start(Ground(texture), Hot(days), [], days);

    private static bool Lasts(WateredBed bed, BedWeather sky, int from, int until, Hold hold, double mm)
    {
        var given = new double[until];
        given[from] = mm;
        return HoldsFrom(bed, sky, from, until, hold, given, afterHour: 0);
    }

    /// <summary>True where every hour from the first round on holds.</summary>
    private static bool HoldsFrom(WateredBed start, BedWeather sky, int from, int until, Hold hold, double[] given, int afterHour = 7)
    {
        var bed = start.Copy();
        for (var hour = from; hour < until; hour++)
        {
            bed.Step(sky, hour, given[hour]);
            if (hour >= from + afterHour && !bed.Holds(hold))
            {
                return false;
            }
        }

        return true;
    }

    private static double[] Trace(WateredBed start, BedWeather sky, int from, int until, double[] given)
    {
        var (bed, suction) = (start.Copy(), new double[until - from]);
        for (var hour = from; hour < until; hour++)
        {
            bed.Step(sky, hour, given[hour]);
            suction[hour - from] = Math.Log(-bed.ZoneMPa);
        }

        return suction;
    }

    /// <summary>Four invented autumns.</summary>
    private static PlaceSeasons Seasons()
    {
        var place = new Place(41.6, -93.6, 280.0);
        WeatherDay[] days = [.. Enumerable.Range(2000, 5).SelectMany(Year)];
        var history = new WeatherHistory(place, "invented", days, [], []);
        var climate = PlaceClimate.FromHistory(days, place);
        var windows = Enumerable.Range(2001, 4).Select(y => SeasonWindow.Cut(history, y, new(y, 8, 1), new(y, 8, 1), new(y, 9, 9), climate, place.LatitudeDeg)).ToList();
        return PlaceSeasons.From(windows, place, climate, InputSet.Extremes, SoilHeatConstants.Shipped);
    }

    private static IEnumerable<WeatherDay> Year(int year)
    {
        var random = new SplitMix64((ulong)year);
        for (var date = new DateOnly(year, 1, 1); date.Year == year; date = date.AddDays(1))
        {
            var mean = 10.0 - (14.0 * Math.Cos(2.0 * Math.PI * (date.DayOfYear - 15) / 365.25)) + (2.0 * random.NextNormal());
            yield return new WeatherDay(date, mean + 6.0, mean - 6.0, random.NextDouble() < 0.2 ? 8.0 * random.NextDouble() : 0.0);
        }
    }
}
