using System.Globalization;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Watering;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Water;

/// <summary>Each day's watering from what the ground holds and what is to come.</summary>
public static class DailyWatering
{
    private const int WeekDays = 7;

    private static readonly DailySettings Settings = new();

    /// <summary>Today's rounds, the week ahead and what needs attention. Pure; the same scene gives the same plan.</summary>
    /// <param name="scene">What is known this morning.</param>
    public static DailyPlan Today(DailyScene scene)
    {
        ArgumentNullException.ThrowIfNull(scene);
        ArgumentOutOfRangeException.ThrowIfZero(scene.Sets.Count, nameof(scene));
        ArgumentOutOfRangeException.ThrowIfZero(scene.Starts.Count, nameof(scene));
        ArgumentOutOfRangeException.ThrowIfLessThan(scene.Today, scene.SeedDown, nameof(scene));
        var known = WaterKnown.Of(scene);
        var thirst = ThirstLearned.Of(scene, known);
        var phase = Phase(scene);
        var record = BedRecord.Of(scene, known, known.Sky.Thirstier(thirst.Factor), phase.Layer);
        var expected = scene.Place.Expected ?? new ExpectedSky([Usual(scene)]);
        var ahead = expected.Ahead(known.Sky, known.Today, (known.Sky.Hours / 24) - known.Today, WeekDays + Settings.DaysAhead, 1.0).Thirstier(thirst.Factor);
        var week = Week(record.Bed.Copy(), ahead, known.Today, Limits(scene, phase, expected));
        IReadOnlyList<DailyOutlook> outlook = [.. week.Select((day, i) => Outlook(scene, known, i, day.GivenMm))];
        var rounds = outlook[0].Timed;
        return new DailyPlan(
            Sentence(rounds),
            DailyReasons.Of(scene, known, thirst, record, ahead, week[0].GivenMm),
            rounds,
            outlook,
            DailyWarnings.Of(scene, known, record, ahead, week),
            DailyFigures.Of(scene, known, thirst, record, rounds),
            [.. Assumptions(scene, known)]);
    }

    /// <summary>The part of the season by the days since the first green; by the days since seed-down where none was seen.</summary>
    private static NeededPhase Phase(DailyScene scene)
    {
        const int UsualDaysToGreen = 14;
        const int DaysEach = 14;
        var green = WaterKnown.Mine<LogEntry.FirstGreen>(scene).FirstOrDefault();
        var since = scene.Today.DayNumber - (green?.Day.DayNumber ?? scene.SeedDown.AddDays(UsualDaysToGreen).DayNumber);
        return NeededPhase.All[Math.Clamp(since / DaysEach, 0, NeededPhase.All.Count - 1)];
    }

    private static RoundLimits Limits(DailyScene scene, NeededPhase phase, ExpectedSky expected) =>
        Settings.Limits(scene.Starts, WateringScenes.UsualWantedMPa, expected.RainChance) with { Hold = phase.Hold, LeastMm = phase.LightestMm };

    private static BedWeather Usual(DailyScene scene)
    {
        var days = scene.Today.DayNumber - scene.Place.FirstDay.DayNumber + WeekDays + Settings.DaysAhead;
        return BedWeather.Of(
            [.. Enumerable.Range(0, days).Select(d => SeasonWindow.Usual(scene.Place.FirstDay.AddDays(d), scene.Place.Climate, scene.Place.Place.LatitudeDeg))],
            scene.Place.Place,
            scene.Place.Climate,
            SoilHeatConstants.Shipped);
    }

    private static List<(double[] GivenMm, int? DryAt)> Week(WateredBed bed, BedWeather ahead, int today, RoundLimits limits)
    {
        var week = new List<(double[], int?)>();
        for (var day = today; day < today + WeekDays && 24 * (day + Settings.DaysAhead) <= ahead.Hours; day++)
        {
            var end = 24 * (day + Settings.DaysAhead);
            var given = LeastWater.Day(bed, new BedWeather(ahead.RainMm[..end], ahead.DemandMm[..end]), day, limits);
            int? dryAt = null;
            for (var hour = 0; hour < 24; hour++)
            {
                bed.Step(ahead, (24 * day) + hour, given[hour]);
                dryAt ??= bed.Dry ? hour : null;
            }

            week.Add((given, dryAt));
        }

        return week;
    }

    private static string Sentence(IReadOnlyList<DailyRound> rounds)
    {
        if (rounds.Count == 0)
        {
            return "No watering today: the ground holds enough until tomorrow's first round.";
        }

        var parts = rounds.Select(r => string.Create(CultureInfo.InvariantCulture, $"{r.Start:HH:mm} {new Depth(r.Depth.Value).Inches:0.00} in ({r.Depth.Value:0.0} mm)"));
        return $"Water {(rounds.Count == 1 ? "once" : rounds.Count == 2 ? "twice" : $"{rounds.Count} times")} today: {string.Join(", ", parts)}.";
    }

    private static DailyOutlook Outlook(DailyScene scene, WaterKnown known, int ahead, double[] given)
    {
        var day = scene.Today.AddDays(ahead);
        var forecast = 24 * (known.Today + ahead + 1) <= known.Sky.Hours;
        return new DailyOutlook(day, given.Count(mm => mm > 0.0), new Figure(
            string.Create(CultureInfo.InvariantCulture, $"water.daily.{scene.PatchId}.day-{ahead}"),
            string.Create(CultureInfo.InvariantCulture, $"Water on {day:yyyy-MM-dd}"),
            QuantityKind.Depth,
            given.Sum(),
            DailyFigures.Least(forecast ? "forecast weather" : "usual weather of the date, no rain")), forecast, DailyRounds.Of(scene, given, ahead));
    }

    private static IEnumerable<Assumption> Assumptions(DailyScene scene, WaterKnown known)
    {
        if (known.Assumed)
        {
            yield return new Assumption(
                $"assumed.water.daily.{scene.PatchId}.given", "Nothing is written of water given since seed-down: the fixed rounds are taken as given.", "Ground that got less is drier than shown.", "Write down each watering.");
        }

        if (known.Missing > 0)
        {
            yield return new Assumption(
                $"assumed.water.daily.{scene.PatchId}.weather", $"{known.Missing} days have no weather: the usual year's is taken, without rain.", "Rain of those days is not counted.", "Bring the weather up to yesterday, or read a gauge.");
        }

        if (scene.Place.Expected is null)
        {
            yield return new Assumption(
                $"assumed.water.daily.{scene.PatchId}.usual", "No past season of these dates is whole: the usual year's temperatures stand for the days ahead.", "The week ahead rests on them.", "Give weather of past years.");
        }
    }
}
