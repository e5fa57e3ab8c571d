using CsCheck;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Tests.Timing;

public sealed class TimingPropertyTests
{
    private static readonly Gen<(ulong Seed, double WarmerC, bool South, int Seasons, GrassSpecies Grass)> AnyPlace =
        Gen.Select(Gen.ULong, Gen.Double[-6.0, 6.0], Gen.Bool, Gen.Int[1, 12], Gen.Enum<GrassSpecies>());

    [Fact]
    public void CurvesStayWithinTheirBounds() => AnyPlace.Sample(
        at =>
        {
            var timing = Time(at.Seed, at.WarmerC, at.South, at.Seasons, at.Grass);
            foreach (var chance in timing.SoilCool.Concat(timing.Frost32).Concat(timing.Frost28).Concat(timing.Stand))
            {
                Assert.InRange(chance.Chance, 0.0, 1.0);
                Assert.Equal(Math.Round(chance.Chance, 2), chance.Chance);
            }

            Assert.All(timing.SoilFan, d => Assert.True(d.P10C <= d.P25C && d.P25C <= d.P50C && d.P50C <= d.P75C && d.P75C <= d.P90C));
        },
        iter: 15);

    [Fact]
    public void WhatHasComeStaysAndTheHarderFrostComesLater() => AnyPlace.Sample(
        at =>
        {
            var timing = Time(at.Seed, at.WarmerC, at.South, at.Seasons, at.Grass);
            foreach (var curve in new[] { timing.SoilCool, timing.Frost32, timing.Frost28 })
            {
                Assert.All(curve.Zip(curve.Skip(1)), pair => Assert.True(pair.First.Chance <= pair.Second.Chance));
            }

            Assert.All(timing.Frost32.Zip(timing.Frost28), pair => Assert.True(pair.Second.Chance <= pair.First.Chance));
        },
        iter: 15);

    [Fact]
    public void EveryDayOfTheWindowIsNearlyAsGoodAsTheBest() => AnyPlace.Sample(
        at =>
        {
            var timing = Time(at.Seed, at.WarmerC, at.South, at.Seasons, at.Grass);
            if (timing.Window is not { } window)
            {
                return;
            }

            var inside = timing.Stand.Where(c => c.Date >= window.Opens && c.Date <= window.Closes).ToArray();
            Assert.Contains(inside, c => c.Date == window.Best);
            // The widest standard error there is: one season, (1 + 2) / 5.
            Assert.All(inside, c => Assert.True(c.Chance >= window.ChanceAtBest - 0.25));
            Assert.True(window.ChanceAtBest >= 0.5);
        },
        iter: 15);

    private static SeasonTiming Time(ulong seed, double warmerC, bool south, int seasons, GrassSpecies grass)
    {
        Place place = south ? InventedWeather.South : InventedWeather.North;
        var weather = InventedWeather.Years(2020 - seasons, 2019, place, seed, warmerC);
        return Invented.Time(weather, new Choices { Season = 2020 }, place, grass).Value!;
    }
}
