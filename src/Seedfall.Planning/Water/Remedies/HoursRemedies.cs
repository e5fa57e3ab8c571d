using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>Hours that could be asked for.</summary>
internal static class HoursRemedies
{
    internal static IEnumerable<RemedyCandidate> Of(WaterScene scene, TriedPhase worst)
    {
        if (!WateringHours.Limited(scene.Supply))
        {
            yield break;
        }

        var allowed = scene.Supply!.Allowed;
        yield return RemedyCandidate.Of(
            "permit",
            "Ask the town for a new-seed watering permit: many forbid several waterings a day but grant 14 to 21 days to new seed, some for repaired lawns too.",
            scene with { Supply = scene.Supply with { NewSeedPermit = true } },
            changed => Rounds("permit", changed, worst));
        yield return RemedyCandidate.Of(
            "every-day",
            "Ask for the same hours on every day of the week while the seed sprouts.",
            scene with { Supply = scene.Supply with { Allowed = [.. allowed.Select(window => window with { Days = WeekDays.All })] } },
            changed => Rounds("every-day", changed, worst));
        yield return RemedyCandidate.Of(
            "midday",
            "Ask for 11:00 to 17:00 as well on the allowed days, or whether a hose held in the hand is exempt then.",
            scene with { Supply = scene.Supply with { Allowed = [.. allowed, .. allowed.Select(window => new WateringWindow(window.Days, new TimeOnly(11, 0), new TimeOnly(17, 0))).Distinct()] } },
            changed => Rounds("midday", changed, worst));
    }

    private static Figure Rounds(string id, WaterScene scene, TriedPhase worst)
    {
        var fit = RemedyCandidate.Same(scene, worst);
        return new Figure($"water.remedy.{id}.rounds", "Rounds that then fit on the tightest day, set after set", QuantityKind.Count, fit.TightestRounds, new Working(
            "rounds of t minutes, each in its own part of the day", [new("t", "minutes for one round", fit.RoundMinutes, "min"), new("n", "rounds wanted", fit.Need.RoundsPerDay, "")], "this plan's water proof", Sureness.Computed));
    }
}
