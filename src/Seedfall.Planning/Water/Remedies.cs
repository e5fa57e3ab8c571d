using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Water;

/// <summary>What would make the water enough: each remedy is the same scene, reckoned again with one thing changed.</summary>
internal static class Remedies
{
    private const int Shown = 3;

    /// <summary>The three best remedies, those that mend it whole first and easier before harder.</summary>
    internal static IReadOnlyList<Remedy> For(WaterScene scene, PhaseFit worst)
    {
        var missing = MissingRounds(WaterFitting.Fit(scene));
        var tried = Candidates(scene, worst).Select((candidate, ease) => (candidate, ease, Left: MissingRounds(WaterFitting.Fit(candidate.Scene)))).ToArray();
        return [.. tried
            .Where(t => t.Left < missing - 1e-9)
            .OrderBy(t => t.Left)
            .ThenBy(t => t.ease)
            .Take(Shown)
            .Select(t => Shape(t.candidate, t.Left, missing))];
    }

    /// <summary>Rounds a week, over all binding phases, that find no allowed time.</summary>
    private static double MissingRounds(IReadOnlyList<PhaseFit> fits) => fits.Where(fit => fit.Need.Binding).Sum(fit => fit.ShortRounds);

    private static Remedy Shape(Candidate candidate, double left, double missing)
    {
        var rest = left <= 0.0
            ? "With that alone the water is enough."
            : string.Create(CultureInfo.InvariantCulture, $"By itself it still leaves {Math.Ceiling(left):0} of {Math.Ceiling(missing):0} missing rounds.");
        return new Remedy($"water.remedy.{candidate.Id}", $"{candidate.Sentence} {rest}", candidate.Effect ?? Left(candidate.Id, left, missing));
    }

    private static Figure Left(string id, double left, double missing) => new(
        $"water.remedy.{id}.left", "Rounds a week still missing", QuantityKind.Number, left, new Working(
            "the water proof reckoned again with this one change, missing rounds summed over the phases",
            [new("before", "rounds a week missing without it", missing, "")],
            "this plan's water proof",
            Sureness.Computed));

    private static IEnumerable<Candidate> Candidates(WaterScene scene, PhaseFit worst)
    {
        if (WateringHours.Limited(scene.Supply))
        {
            var freed = scene with { Supply = scene.Supply! with { NewSeedPermit = true } };
            var allowed = scene.Supply!.Allowed;
            var daily = scene with { Supply = scene.Supply with { Allowed = [.. allowed.Select(window => window with { Days = WeekDays.All })] } };
            var midday = scene with { Supply = scene.Supply with { Allowed = [.. allowed, .. allowed.Select(window => new WateringWindow(window.Days, new TimeOnly(11, 0), new TimeOnly(17, 0))).Distinct()] } };
            yield return new Candidate("permit", "Ask the town for a new-seed watering permit; many grant two to three weeks, some for repaired lawns too.", freed, Rounds("permit", freed, worst));
            yield return new Candidate("every-day", "Ask for the same hours on every day of the week while the seed sprouts.", daily, Rounds("every-day", daily, worst));
            yield return new Candidate("midday", "Ask for 11:00 to 17:00 as well on the allowed days, or whether a hose held in the hand is exempt then.", midday, Rounds("midday", midday, worst));
        }

        if (scene.MulchFactor == 1.0)
        {
            var straw = scene with { MulchFactor = MulchFactor.For(CoverKind.Straw) };
            yield return new Candidate("mulch", "Cover the seedbed with clean straw, half the soil still visible: it dries about a quarter slower.", straw, null);
        }

        if (worst.Need.Phase.Id == "seedbed" && worst.Need.RoundsPerDay > 2 && scene.Chosen.Rounds is null)
        {
            var fewer = worst.Need.RoundsPerDay - 1;
            yield return new Candidate("fewer-rounds", $"Water {fewer} times a day instead of {worst.Need.RoundsPerDay}, a little more each time; the top dries further between, so check it at midday.", scene with { MostRounds = fewer }, null);
        }

        if (scene.Sets.Any(set => set.Positions > 1) && scene.MinutesPerMove > 0)
        {
            var extra = scene.Sets.Sum(set => set.Positions - 1);
            yield return new Candidate("no-moves", $"Set {extra} more sprinkler{(extra == 1 ? "" : "s")} so that none is moved, on a manifold with a timer.", scene with { MinutesPerMove = 0 }, null);
        }

        if (scene.Sets.Count > 1 || scene.Sets.Any(set => set.Positions > 1))
        {
            var second = scene with { Taps = scene.Taps + 1 };
            yield return new Candidate("second-tap", "Run a second tap of the same strength beside the first, two sprinklers at once.", Halved(second), RoundLength("second-tap", Halved(second), worst));
        }

        foreach (var stages in Stages(scene))
        {
            var staged = scene with { Stages = stages };
            yield return new Candidate($"stages-{stages}", $"Seed in {stages} stages, the next when the one before is up, about three weeks apart and only while the window holds.", staged, Part(stages, scene));
        }
    }

    /// <summary>Moved sprinklers divide their positions between the taps; without that one moved set could not run on two.</summary>
    private static WaterScene Halved(WaterScene scene) => scene with { Sets = [.. scene.Sets.SelectMany(Split)] };

    private static IEnumerable<SetFacts> Split(SetFacts set)
    {
        if (set.Positions < 2)
        {
            return [set];
        }

        var first = set.Positions / 2;
        return
        [
            set with { Positions = first, AreaM2 = set.AreaM2 * first / set.Positions },
            set with { Positions = set.Positions - first, AreaM2 = set.AreaM2 * (set.Positions - first) / set.Positions, Key = set.Key + "b" },
        ];
    }

    /// <summary>Fewest stages that mend it, up to four; the most possible where none does.</summary>
    private static IEnumerable<int> Stages(WaterScene scene)
    {
        var parts = Math.Min(4, scene.Sets.Sum(set => set.Positions));
        for (var stages = 2; stages <= parts; stages++)
        {
            if (stages == parts || WaterFitting.Worst(WaterFitting.Fit(scene with { Stages = stages })) is null)
            {
                return [stages];
            }
        }

        return [];
    }

    private static Figure Part(int stages, WaterScene scene) => new($"water.remedy.stages-{stages}.area", "Ground seeded at a time", QuantityKind.Area, scene.Sets.Sum(set => set.AreaM2) / stages, new Working(
        "A / n",
        [new("A", "ground to be watered", new Area(scene.Sets.Sum(set => set.AreaM2)).SquareFeet, "sq ft"), new("n", "stages", stages, "")],
        "arithmetic",
        Sureness.Computed));

    private static Figure Rounds(string id, WaterScene scene, PhaseFit worst)
    {
        var fit = Same(scene, worst);
        return new Figure($"water.remedy.{id}.rounds", "Rounds that then fit on the tightest day", QuantityKind.Count, fit.TightestRounds, new Working(
            "rounds of t minutes, each in its own part of the day", [new("t", "minutes for one round", fit.RoundMinutes, "min"), new("n", "rounds wanted", fit.Need.RoundsPerDay, "")], "this plan's water proof", Sureness.Computed));
    }

    private static Figure RoundLength(string id, WaterScene scene, PhaseFit worst) => new(
        $"water.remedy.{id}.round", "Minutes one round then takes", QuantityKind.Minutes, Same(scene, worst).RoundMinutes, new Working(
            "sets divided between two taps", [new("before", "minutes for one round now", worst.RoundMinutes, "min")], "this plan's water proof", Sureness.Computed));

    private static PhaseFit Same(WaterScene scene, PhaseFit worst) => WaterFitting.Fit(scene).First(fit => fit.Need.Phase.Id == worst.Need.Phase.Id);

    private sealed record Candidate(string Id, string Sentence, WaterScene Scene, Figure? Effect);
}
