using CsCheck;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Water;

public sealed class WaterPropertyTests
{
    private static readonly Gen<WateringWindow> AnyWindow = Gen.Select(
        Gen.Int[1, 127], Gen.Int[0, 22], Gen.Int[1, 12], (days, from, hours) => WaterLawn.Window((WeekDays)days, from, Math.Min(23, from + hours)));

    private static readonly Gen<SprinklerSet> AnySet = Gen.Select(
        Gen.Enum<SprinklerKind>(), Gen.Double[0.15, 2.5], Gen.Int[1, 9], Gen.Bool, (kind, rate, positions, typed) => new SprinklerSet
        {
            Name = kind.ToString(),
            PatchIds = ["front"],
            Kind = kind,
            Rate = typed ? PrecipitationRate.FromInchesPerHour(rate) : null,
            Positions = positions,
        });

    private static readonly Gen<(double Gpm, SprinklerSet[] Sets, WateringWindow[] Allowed, bool Timer, double SquareFeet, SoilTexture Texture)> Any = Gen.Select(
        Gen.Double[1.0, 25.0], AnySet.Array[0, 4], AnyWindow.Array[0, 3], Gen.Bool, Gen.Double[300.0, 20000.0], Gen.Enum<SoilTexture>());

    [Fact]
    public void FlowNeverExceedsTheTap() => Any.Sample(
        any =>
        {
            var proof = Prove(any, any.Gpm);
            foreach (var draw in proof.Figures.Where(f => f.Id.EndsWith(".draw", StringComparison.Ordinal)))
            {
                Assert.True(new FlowRate(draw.Value).GallonsPerMinute <= any.Gpm * (1.0 + 1e-12));
            }

            foreach (var phase in proof.Phases)
            {
                var tapLiters = FlowRate.FromGallonsPerMinute(any.Gpm).LitersPerMinute * phase.Runs.Zip(SetPositions(proof, any)).Sum(r => r.First.MinutesPerRound.Value * r.Second);
                var perRound = phase.Totals.First(f => f.Id.EndsWith("day-volume", StringComparison.Ordinal)).Value / Math.Max(1.0, Math.Round(phase.RoundsPerDay));
                Assert.True(perRound <= tapLiters * (1.0 + 1e-9));
            }
        },
        iter: 150);

    [Fact]
    public void NothingRunsOutsideTheAllowedHoursAndRoundsDoNotOverlap() => Any.Sample(
        any =>
        {
            foreach (var phase in Prove(any, any.Gpm).Phases)
            {
                var minutes = (int)phase.Totals.First(f => f.Id.EndsWith("round-minutes", StringComparison.Ordinal)).Value;
                Assert.Equal(minutes, phase.Totals.First(f => f.Id.EndsWith("round-minutes", StringComparison.Ordinal)).Value);
                Assert.All(phase.Runs, run => Assert.Equal(Math.Round(run.MinutesPerRound.Value), run.MinutesPerRound.Value));
                var starts = phase.Starts.Select(s => (int)s.ToTimeSpan().TotalMinutes).ToArray();
                Assert.All(starts.Zip(starts.Skip(1)), pair => Assert.True(pair.Second >= pair.First + minutes));
                Assert.All(starts, start => Assert.True(any.Allowed.Length == 0 ? start + minutes <= 1440 : Inside(any.Allowed, start, minutes)));
            }
        },
        iter: 150);

    [Fact]
    public void MoreFlowNeverWorsensTheProof() => Gen.Select(Any, Gen.Double[0.1, 20.0]).Sample(
        (any, more) =>
        {
            var (weak, strong) = (Prove(any, any.Gpm), Prove(any, any.Gpm + more));
            Assert.True((strong.Shortfall?.Value ?? 0.0) <= (weak.Shortfall?.Value ?? 0.0) + 1e-6);
            if (weak.Result != ProofResult.Refused)
            {
                Assert.NotEqual(ProofResult.Refused, strong.Result);
            }
        },
        iter: 150);

    [Fact]
    public void MoreRainNeverTakesMoreWater() => Gen.Select(Gen.ULong[0, 50], Gen.Double[0.0, 15.0], Gen.Double[0.0, 10.0]).Sample(
        (seed, rainMm, moreMm) =>
        {
            var lawn = WaterLawn.Lawn(WaterLawn.Supply());
            var dry = WaterLawn.Prove(lawn, InventedWeather.Years(2018, 2022, null, seed, 0.0, rainMm)).Value!;
            var wet = WaterLawn.Prove(lawn, InventedWeather.Years(2018, 2022, null, seed, 0.0, rainMm + moreMm)).Value!;
            Assert.Equal(dry.Result, wet.Result);
            Assert.True(wet.SeasonVolume!.Value <= dry.SeasonVolume!.Value + 1e-6);
            Assert.True(wet.SeasonCost!.Value <= dry.SeasonCost!.Value + 1e-6);
        },
        iter: 15);

    [Fact]
    public void RemediesNeverWorsen() => Any.Sample(
        any =>
        {
            var proof = Prove(any, any.Gpm);
            Assert.Equal(proof.Result == ProofResult.Refused, proof.Shortfall is not null);
            Assert.True(proof.Remedies.Count <= 3);
            Assert.Equal(proof.Remedies.Count, proof.Remedies.Select(r => r.Id).Distinct().Count());
        },
        iter: 100);

    private static WaterProof Prove((double Gpm, SprinklerSet[] Sets, WateringWindow[] Allowed, bool Timer, double SquareFeet, SoilTexture Texture) any, double gpm) =>
        WaterLawn.Prove(
            WaterLawn.Lawn(
                new WaterSupply { Flow = FlowRate.FromGallonsPerMinute(gpm), Sets = any.Sets, Allowed = any.Allowed, Timer = any.Timer },
                any.SquareFeet,
                any.Texture),
            ShortWeather).Value!;

    private static readonly Engine.Weather.WeatherHistory ShortWeather = InventedWeather.Years(2022, 2022);

    /// <summary>Positions of each run: as entered, or as the assumed sprinkler's sentence says.</summary>
    private static IEnumerable<int> SetPositions(WaterProof proof, (double Gpm, SprinklerSet[] Sets, WateringWindow[] Allowed, bool Timer, double SquareFeet, SoilTexture Texture) any) =>
        any.Sets.Length > 0
            ? any.Sets.Select(s => s.Positions)
            : [(int)Math.Max(1.0, Math.Ceiling((Area.FromSquareFeet(any.SquareFeet).SquareMeters * 12.7 / 60.0 / FlowRate.FromGallonsPerMinute(any.Gpm).LitersPerMinute) - 1e-9))];

    private static bool Inside(IEnumerable<WateringWindow> allowed, int start, int minutes)
    {
        // Windows of one day that touch make one stretch; look minute by minute on each weekday.
        foreach (var day in new[] { WeekDays.Monday, WeekDays.Tuesday, WeekDays.Wednesday, WeekDays.Thursday, WeekDays.Friday, WeekDays.Saturday, WeekDays.Sunday })
        {
            var open = allowed.Where(w => (w.Days & day) != 0).ToArray();
            if (Enumerable.Range(start, minutes).All(m => open.Any(w => m >= w.From.ToTimeSpan().TotalMinutes && m < w.To.ToTimeSpan().TotalMinutes)))
            {
                return true;
            }
        }

        return false;
    }
}
