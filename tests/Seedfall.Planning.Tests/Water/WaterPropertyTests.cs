using CsCheck;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Planning.Tests.Timing;
using Seedfall.Planning.Water;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water;

public sealed class WaterPropertyTests
{
    private static readonly Gen<WateringWindow> AnyWindow = Gen.Select(
        Gen.Int[1, 127], Gen.Int[0, 22], Gen.Int[1, 12], (days, from, hours) => WaterLawn.Window((WeekDays)days, from, Math.Min(23, from + hours)));

    private static readonly Gen<SprinklerSet> AnySet = Gen.Select(
        Gen.Enum<SprinklerKind>(), Gen.Double[0.15, 2.5], Gen.Int[1, 6], Gen.Bool, (kind, rate, positions, typed) => new SprinklerSet
        {
            Name = kind.ToString(),
            PatchIds = ["front"],
            Kind = kind,
            Rate = typed ? PrecipitationRate.FromInchesPerHour(rate) : null,
            Positions = positions,
        });

    private static readonly Gen<(double Gpm, SprinklerSet[] Sets, WateringWindow[] Allowed, bool Timer, double SquareFeet, SoilTexture Texture)> Any = Gen.Select(
        Gen.Double[1.0, 25.0], AnySet.Array[0, 3].Select(sets => sets.Select((set, k) => set with { Name = $"{set.Name} {k + 1}" }).ToArray()), AnyWindow.Array[0, 3], Gen.Bool, Gen.Double[300.0, 20000.0], Gen.Enum<SoilTexture>());

    /// <summary>No set draws more than the tap gives, nor all that run in one minute together.</summary>
    [Fact]
    public void FlowNeverExceedsTheTap() => Any.Sample(
        any =>
        {
            var proof = Prove(any, any.Gpm);
            var draws = proof.Figures.Where(f => f.Id.EndsWith(".draw", StringComparison.Ordinal)).Select(f => f.Value).ToArray();
            var tap = FlowRate.FromGallonsPerMinute(any.Gpm).LitersPerMinute;
            Assert.All(draws, draw => Assert.True(draw <= tap * (1.0 + 1e-12)));
            foreach (var (phase, runs) in Found(proof))
            {
                var order = phase.Runs.Select(r => r.SetName).ToList();
                foreach (var moment in runs)
                {
                    var together = runs.Where(r => r.Start <= moment.Start && moment.Start < r.End).Sum(r => draws[order.IndexOf(r.Set)]);
                    Assert.True(together <= tap + (0.001 * runs.Count));
                }
            }
        },
        iter: 25);

    /// <summary>Every run lies whole inside the allowed hours of the days it is for.</summary>
    [Fact]
    public void NothingRunsOutsideTheAllowedHours() => Any.Sample(
        any =>
        {
            foreach (var (day, week, run) in Prove(any, any.Gpm).Phases.SelectMany(Runs))
            {
                var days = week ? (WeekDays)(1 << (run.Start / 1440)) : day;
                Assert.True(any.Allowed.Length == 0 ? run.Start % 1440 <= 1440 - (week ? 0 : run.Minutes) : Inside(any.Allowed, days, run.Start % 1440, run.Minutes), $"{run} on {days}");
            }
        },
        iter: 25);

    /// <summary>Each set gets in each round, in each position, the whole minutes the phase asks of it; a phase without a timetable is named and says why.</summary>
    [Fact]
    public void EverySetGetsItsMinutesOrIsNamed() => Any.Sample(
        any =>
        {
            var proof = Prove(any, any.Gpm);
            foreach (var (phase, runs) in Found(proof))
            {
                Assert.All(phase.Runs, run => Assert.Equal(Math.Round(run.MinutesPerRound.Value), run.MinutesPerRound.Value));
                Assert.All(runs.GroupBy(r => (r.Set, r.Round, r.Position)), part => Assert.Equal(phase.Runs.First(r => r.SetName == part.Key.Set).MinutesPerRound.Value, part.Sum(r => r.Minutes)));
                Assert.All(phase.Runs, run => Assert.Contains(runs, r => r.Set == run.SetName));
            }

            if (proof.Phases.Where(p => p.PhaseId != "soak").Any(p => !p.Timetables.Holds))
            {
                Assert.True(proof.Result is ProofResult.Refused or ProofResult.NotProven);
                Assert.NotNull(proof.Shortfall);
                Assert.Contains(proof.Phases.SelectMany(p => p.Timetables.Proofs), day => day.Proof switch
                {
                    TimetableProof.Impossible none => proof.Sentence.Contains(none.Reason, StringComparison.Ordinal),
                    TimetableProof.NotProven open => proof.Sentence.Contains(open.Reason, StringComparison.Ordinal),
                    _ => false,
                });
            }
        },
        iter: 25);

    [Fact]
    public void MoreFlowNeverTurnsAProofIntoARefusal() => Gen.Select(Any, Gen.Double[0.1, 20.0]).Sample(
        (any, more) =>
        {
            if (Prove(any, any.Gpm).Result is ProofResult.Holds or ProofResult.Assumed)
            {
                Assert.NotEqual(ProofResult.Refused, Prove(any, any.Gpm + more).Result);
            }
        },
        iter: 25);

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
            Assert.Equal(proof.Result is ProofResult.Refused or ProofResult.NotProven, proof.Shortfall is not null);
            Assert.True(proof.Remedies.Count <= 5);
            Assert.Equal(proof.Remedies.Count, proof.Remedies.Select(r => r.Id).Distinct().Count());
        },
        iter: 30);

    private static WaterProof Prove((double Gpm, SprinklerSet[] Sets, WateringWindow[] Allowed, bool Timer, double SquareFeet, SoilTexture Texture) any, double gpm) =>
        WaterLawn.Prove(
            WaterLawn.Lawn(
                new WaterSupply { Flow = FlowRate.FromGallonsPerMinute(gpm), Sets = any.Sets, Allowed = any.Allowed, Timer = any.Timer },
                any.SquareFeet,
                any.Texture),
            ShortWeather).Value!;

    private static readonly Engine.Weather.WeatherHistory ShortWeather = InventedWeather.Years(2022, 2022);

    private static IEnumerable<(PhaseWatering Phase, IReadOnlyList<TimetableRun> Runs)> Found(WaterProof proof) =>
        from phase in proof.Phases
        from day in phase.Timetables.Proofs
        where day.Proof is TimetableProof.Found
        select (phase, ((TimetableProof.Found)day.Proof).Runs);

    private static IEnumerable<(WeekDays Days, bool Week, TimetableRun Run)> Runs(PhaseWatering phase) =>
        from day in phase.Timetables.Proofs
        where day.Proof is TimetableProof.Found
        from run in ((TimetableProof.Found)day.Proof).Runs
        select (day.Days, phase.Timetables.Seldom is not null, run);

    /// <summary>True where every minute lies in a window of each of the days.</summary>
    private static bool Inside(IEnumerable<WateringWindow> allowed, WeekDays days, int start, int minutes) => Enum.GetValues<WeekDays>().Where(d => int.PopCount((int)d) == 1 && days.HasFlag(d)).All(day =>
    {
        var open = allowed.Where(w => (w.Days & day) != 0).ToArray();
        return Enumerable.Range(start, minutes).All(m => open.Any(w => m >= w.From.ToTimeSpan().TotalMinutes && (m < w.To.ToTimeSpan().TotalMinutes || w.To == new TimeOnly(23, 59))));
    });
}
