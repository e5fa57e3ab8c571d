using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan.Tasks;
using Seedfall.Planning.Records;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Plan;

/// <summary>The whole recovery plan as one function: judge, choose the day, prove the water, work out materials, date the work.</summary>
public static class RecoveryPlanner
{
    /// <summary>The plan of one lawn in one season.</summary>
    /// <param name="lawn">A lawn without <see cref="LawnRules.Problems"/>.</param>
    /// <param name="choices">Season and what the adviser chose.</param>
    /// <param name="weather">Daily weather of the place; past seasons make the chances.</param>
    /// <param name="tables">Species and rule packs.</param>
    /// <param name="log">What was written in the field; it moves the plan. Null means nothing yet.</param>
    /// <exception cref="ArgumentException">The lawn has a problem; the message names the first.</exception>
    public static RecoveryPlan Plan(Lawn lawn, Choices choices, WeatherHistory weather, TradeTables tables, FieldLog? log = null)
    {
        RequireSound(lawn, tables);
        var written = log ?? FieldLog.Empty;
        choices = AsDone(choices, written);
        lawn = RecordedSprays.Of(SurveyedPatch.Of(lawn), written, choices.Season);
        lawn = SunFilling.Fill(lawn, choices.Season);
        var ground = PatchGround.Summarize(lawn);
        var patches = ground.Value!;
        var seed = SeedPlanning.Plan(lawn, choices, tables, patches);
        var wait = SeedingInterval.EarliestSeeding(lawn, choices.Method);
        var timing = Time(SeasonScene.Of(lawn, choices, weather, tables, Grasses(lawn, seed.Value), written), choices, tables, patches, seed.Value, wait);
        var water = WaterPlanning.Prove(lawn, patches, timing.Value!, weather, tables, choices);
        var verdict = LawnVerdict.Judge(lawn, choices, patches, timing.Value!, water.Value, wait.Earliest, tables);
        var season = verdict.Kind is VerdictKind.Recover or VerdictKind.StartOver ? timing.Value! : timing.Value! with { SeedDown = null, Phases = [], CoverForecast = [], CoverByPatch = [], CoverWorking = null };
        var late = LateSeason.Of(weather, choices.Season, lawn.Place.LatitudeDeg < 0.0);
        var materials = PlanMaterials(lawn, choices, tables, patches, season, late, seed, written);
        return Assemble(new Parts(lawn, choices, weather, tables, ground, timing, water, verdict, season, late, materials, wait, written));
    }

    private static void RequireSound(Lawn lawn, TradeTables tables)
    {
        var problems = LawnRules.Problems(lawn, tables);
        if (problems.Count > 0)
        {
            throw new ArgumentException($"{problems[0].Path}: found {problems[0].Found}, expected {problems[0].Expected}", nameof(lawn));
        }
    }

    /// <summary>Seed that is down settles the day.</summary>
    private static Choices AsDone(Choices choices, FieldLog log) =>
        log.Standing.OfType<LogEntry.SeededDown>().LastOrDefault(entry => entry.Day.Year == choices.Season) is { } seeded ? choices with { SeedDown = seeded.Day } : choices;

    private static IReadOnlyList<GrassSpecies> Grasses(Lawn lawn, SeedPlan? seed) => seed is null
        ? [.. lawn.Patches.SelectMany(p => p.Grasses).Distinct()]
        : [.. seed.Mix.Select(part => part.Species)];

    /// <summary>
    /// The season's timing: rules of thumb say where to look and what water that asks for, the simulation with the water the tap
    /// can give then chooses. A best day that a past spray forbids moves to the first day it allows, where the window still holds.
    /// </summary>
    private static Section<SeasonTiming> Time(
        SeasonScene scene, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, SeedPlan? seed, SeedingWait wait)
    {
        var ruled = SeasonTimingPlanning.Plan(scene, choices, null);
        var stands = Simulate(scene, ruled.Value!, choices, tables, patches, seed);
        var timing = stands is null ? ruled : SeasonTimingPlanning.Plan(scene, choices, stands);
        var barred = choices.SeedDown is null && timing.Value!.SeedDown is { } day && wait.Earliest > day && wait.Earliest <= timing.Value.Window?.Closes;
        var chosen = barred ? SeasonTimingPlanning.Plan(scene, choices with { SeedDown = wait.Earliest }, stands) : timing;
        return chosen with { Value = chosen.Value! with { Advice = [.. chosen.Value.Advice, .. barred ? [Moved(timing.Value!, wait)] : Array.Empty<Advice>(), .. wait.Advice] } };
    }

    private static SimulatedStands? Simulate(
        SeasonScene scene, SeasonTiming ruled, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, SeedPlan? seed)
    {
        if (seed is null)
        {
            return null;
        }

        var water = WaterPlanning.Draft(scene.Lawn, patches, ruled, scene.Weather, choices);
        return SimulatedStands.Of(scene, Seedbed.Of(scene.Lawn, choices, patches, seed, water, tables), SeasonTimingPlanning.Middle(scene, ruled.Window), choices.SeedDown);
    }

    private static Advice Moved(SeasonTiming best, SeedingWait wait) => new(
        "timing.moved-for-interval",
        $"The best day would be {FigureText.DateText(best.SeedDown!.Value)}; the wait after what was sprayed moves seed-down to {FigureText.DateText(wait.Earliest!.Value)}.",
        "label interval entered with the spray",
        Sureness.Measured);

    private static MaterialParts PlanMaterials(
        Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchSummary> patches, SeasonTiming season, LateSeason late, Section<SeedPlan> seed, FieldLog log)
    {
        if (season.SeedDown is not { } day)
        {
            return MaterialParts.None;
        }

        var feed = FeedPlanning.Plan(lawn, choices, tables, patches, day, late.LateFeed.AsDate(), log);
        var spray = SprayPlanning.Plan(lawn, choices, tables, patches, day, log);
        var cover = CoverPlanning.Plan(lawn, patches);
        return new MaterialParts(seed, feed, spray, cover, MaterialList.Lines(lawn, seed.Value, feed.Value, spray.Value, cover.Value));
    }

    private static RecoveryPlan Assemble(Parts parts)
    {
        var (lawn, choices, materials) = (parts.Lawn, parts.Choices, parts.Materials);
        var (zone, zoneAssumed) = LawnZone.Of(lawn);
        var pack = parts.Tables.Pack(lawn.RulePack) ?? throw new ArgumentException($"the rule pack {lawn.RulePack ?? "general"} is not in the tables", nameof(parts));
        var tasks = TaskList.For(new TaskFacts(
            lawn, choices, parts.Verdict, parts.Season, parts.Water.Value!, parts.Late, Facts(parts),
            materials.Seed.Value, materials.Feed.Value, materials.Spray.Value, materials.Cover.Value, materials.Lines, parts.Log));
        return new RecoveryPlan
        {
            LawnId = lawn.Id,
            LawnName = lawn.Name,
            Season = choices.Season,
            Place = lawn.Place,
            TimeZone = zone,
            Currency = lawn.Prices?.Currency ?? "USD",
            RulePackName = pack.Name,
            Patches = parts.Ground.Value!,
            TotalArea = GroundTotals.Area(parts.Ground.Value!),
            Verdict = parts.Verdict,
            Timing = parts.Season,
            Next = NextStep.Of(tasks, choices.Today, parts.Verdict),
            Water = parts.Water.Value! with { Advice = [.. parts.Water.Value!.Advice, .. LawnRules.Remarks(lawn)] },
            Seed = materials.Seed.Value,
            Feed = materials.Feed.Value,
            Spray = materials.Spray.Value,
            Cover = materials.Cover.Value,
            Materials = materials.Lines,
            TotalCost = MaterialList.TotalCost(materials.Lines),
            Tasks = tasks,
            Walls = Walls(parts),
            AgainstLaw = FertilizerLaw.Against(lawn, parts.Log, pack, choices.Season, LeftOut(materials.Feed.Value)),
            Assumptions = Assumptions(parts, zoneAssumed),
            Cautions = [.. Cautions.All.Where(c => tasks.Any(t => t.CautionIds.Contains(c.Id)))],
            Sources = [.. parts.Weather.Sources, .. parts.Weather.Notes, $"Rules: {pack.Name}"],
        };
    }

    /// <summary>Feedings that were planned and fall out after what is recorded.</summary>
    private static IReadOnlyList<string> LeftOut(FeedPlan? feed) =>
        [.. feed?.Recorded?.Steps.Where(step => step is { Planned: not null, Left: null, EntryIds.Count: 0 }).Select(step => step.Title) ?? []];

    private static IReadOnlyList<SpeciesFacts> Facts(Parts parts) =>
        parts.Materials.Seed.Value is { } seed ? [.. seed.Mix.Select(part => parts.Tables.For(part.Species))] : [];

    private static IReadOnlyList<Wall> Walls(Parts parts)
    {
        var day = parts.Choices.SeedDown ?? parts.Timing.Value!.SeedDown;
        return Distinct(
            [
                .. day is { } planned ? parts.Wait.StandingOn(planned) : parts.Wait.Walls,
                .. parts.Timing.Walls, .. parts.Water.Walls, .. parts.Ground.Walls,
                .. parts.Materials.Seed.Walls, .. parts.Materials.Feed.Walls, .. parts.Materials.Spray.Walls, .. parts.Materials.Cover.Walls,
            ],
            wall => wall.Id + wall.Statement);
    }

    private static IReadOnlyList<Assumption> Assumptions(Parts parts, Assumption? zone) => Distinct(
        [
            .. parts.Ground.Assumptions, .. LawnVerdict.Assumptions(parts.Lawn), .. parts.Timing.Assumptions, .. parts.Wait.Assumptions, .. parts.Water.Assumptions,
            .. parts.Materials.Seed.Assumptions, .. parts.Materials.Feed.Assumptions, .. parts.Materials.Spray.Assumptions, .. parts.Materials.Cover.Assumptions,
            .. zone is null ? Array.Empty<Assumption>() : [zone],
            .. parts.Lawn.RulePack is null ? [GeneralRules] : Array.Empty<Assumption>(),
        ],
        assumption => assumption.Id);

    private static Assumption GeneralRules { get; } = new(
        "assumed.rules",
        "No state or province rules were chosen: the plan keeps to general limits of good practice.",
        "A local law may forbid phosphorus, cap nitrogen lower or close the fall to fertilizer.",
        "Choose the rule pack of the lawn's state, and ask the state where none is listed.");

    private static IReadOnlyList<T> Distinct<T>(IEnumerable<T> items, Func<T, string> key) => [.. items.DistinctBy(key)];

    private sealed record Parts(
        Lawn Lawn,
        Choices Choices,
        WeatherHistory Weather,
        TradeTables Tables,
        Section<IReadOnlyList<PatchSummary>> Ground,
        Section<SeasonTiming> Timing,
        Section<WaterProof> Water,
        Verdict Verdict,
        SeasonTiming Season,
        LateSeason Late,
        MaterialParts Materials,
        SeedingWait Wait,
        FieldLog Log);
}
