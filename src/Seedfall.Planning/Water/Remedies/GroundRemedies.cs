using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>Remedies that make the ground need less, or less often: cover, fewer rounds, a later day.</summary>
internal static class GroundRemedies
{
    private static string Invariant(FormattableString text) => FormattableString.Invariant(text);

    internal static IEnumerable<RemedyCandidate> Of(WaterScene scene, TriedPhase worst, SeasonTiming timing)
    {
        if (scene.Ground.Beds.Any(bed => bed.Ground.MulchCover < MulchFactor.CoveredShare(CoverKind.Straw)))
        {
            yield return RemedyCandidate.Of(
                "mulch", "Cover the seedbed with clean straw, half the soil still visible: it dries more slowly.", scene.On(Strawed(scene.Ground)), changed => HoursBought(scene, changed));
        }

        if (worst.Fit.Need is { Phase.Id: "seedbed", RoundsPerDay: > 2 } need && scene.Ground.Chosen.Rounds is null)
        {
            var fewer = need.RoundsPerDay - 1;
            yield return RemedyCandidate.Of(
                "fewer-rounds",
                Invariant($"Water {fewer} times a day instead of {need.RoundsPerDay}, more each time; the top dries further between, so check it at midday."),
                scene.On(scene.Ground with { MostRounds = fewer }),
                changed => Depth("fewer-rounds", changed, need));
        }

        if (timing is { SeedDown: { } day, Window.Closes: var closes } && closes > day && scene.Ground.Later is { } later)
        {
            var changed = scene.On(later(closes));
            yield return RemedyCandidate.Of(
                "later", Invariant($"Seed later, near the window's end on {closes:yyyy-MM-dd}: days are shorter and cooler, but fewer are left to grow in."), changed, c => Depth("later", c, worst.Fit.Need));
        }
    }

    private static NeedScene Strawed(NeedScene ground)
    {
        var (share, weight) = (MulchFactor.CoveredShare(CoverKind.Straw), CoverRates.ByWeight(CoverKind.Straw).Rate.KilogramsPerSquareMeter);
        return ground with
        {
            MulchFactor = Math.Min(ground.MulchFactor, MulchFactor.For(CoverKind.Straw)),
            Beds = [.. ground.Beds.Select(bed => bed.Ground.MulchCover >= share ? bed : bed with { Ground = bed.Ground with { MulchCover = share, MulchKgM2 = weight } })],
        };
    }

    private static Figure Depth(string id, WaterScene changed, PhaseNeed before)
    {
        var need = changed.Needs.First(n => n.Phase.Id == before.Phase.Id);
        return new Figure($"water.remedy.{id}.day", "Water a day the driest patch then needs", QuantityKind.Depth, need.MostMm * need.RoundsPerDay, new Working(
            "D = n d",
            [
                new("n", "rounds a day", need.RoundsPerDay, ""),
                new("d", "deepest round", new Depth(need.MostMm).Inches, "in"),
                new("n0", "rounds a day now", before.RoundsPerDay, ""),
                new("d0", "deepest round now", new Depth(before.MostMm).Inches, "in"),
            ],
            need.DepthWorking.Source,
            need.DepthWorking.Sureness));
    }

    /// <summary>Hours the driest patch's seedbed lasts longer from a soaking at 7:00 of the first day, without rain: the middle season.</summary>
    private static Figure HoursBought(WaterScene bare, WaterScene covered)
    {
        var hours = bare.Ground.Past.Seasons.Count == 0
            ? []
            : bare.Ground.Beds.Zip(covered.Ground.Beds, (b, c) => (Bare: Lasts(bare.Ground, b), Covered: Lasts(bare.Ground, c))).OrderBy(pair => pair.Bare).Take(1).ToArray();
        return hours.Length > 0
            ? new Figure("water.remedy.mulch.hours", "Hours longer the seedbed then lasts after a soaking", QuantityKind.Number, hours[0].Covered - hours[0].Bare, new Working(
                "t1 - t0, middle of past seasons, from field capacity at 7:00 of the first day, no rain",
                [new("t1", "hours under straw", hours[0].Covered, "h"), new("t0", "hours as it is", hours[0].Bare, "h"), new("n", "past seasons", bare.Ground.Past.Count, "")],
                "hour-by-hour simulation of seedbed water: docs/science/watering.md; potentials held assumed",
                Sureness.Assumed))
            : new Figure("water.remedy.mulch.factor", "Evaporation under straw over bare", QuantityKind.Share, MulchFactor.For(CoverKind.Straw), new Working(
                "1 - 0.55 c", [new("c", "ground covered", MulchFactor.CoveredShare(CoverKind.Straw), "")], MulchFactor.Source, Sureness.CommonPractice));
    }

    private static double Lasts(NeedScene ground, PatchBed bed)
    {
        const int FirstRound = 7;
        var seedbed = NeededPhase.All[0];
        var first = 24 * (ground.Phases.First(p => p.Phase.Id == "seedbed").Phase.From.DayNumber - ground.PastFrom.DayNumber);
        var lasts = ground.Past.Seasons.Select(sky =>
        {
            var dry = new BedWeather(new double[sky.Hours], sky.DemandMm);
            return (double)((new WateredBed(bed.Ground, seedbed.Layer).DriesAt(dry, first + FirstRound, sky.Hours, seedbed.Hold) ?? sky.Hours) - first - FirstRound);
        }).Order().ToArray();
        return Spread.Percentile(lasts, 0.5);
    }
}
