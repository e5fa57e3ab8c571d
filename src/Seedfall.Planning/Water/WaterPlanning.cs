using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water;

/// <summary>Proves that the water can, or cannot, be put on.</summary>
public static class WaterPlanning
{
    /// <summary>
    /// The water proof of the season: the need of each patch in each phase, and a timetable of all sets in the allowed hours, or what
    /// forbids one. The value is never null; where <see cref="SeasonTiming.SeedDown"/> is null the proof is made for the days an average
    /// seeding would take.
    /// </summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="patches">The patches as the plan sees them; at least one with ground.</param>
    /// <param name="timing">The season's timing.</param>
    /// <param name="weather">Daily weather; only years before the season count.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="choices">The season's choices; null means the seedbed's watering is worked out.</param>
    public static Section<WaterProof> Prove(
        Lawn lawn,
        IReadOnlyList<PatchSummary> patches,
        SeasonTiming timing,
        WeatherHistory weather,
        TradeTables tables,
        Choices? choices = null) => Prove(lawn, patches, timing, weather, choices, settle: true);

    /// <summary>The same without what forbids a phase and what would help: the rounds that can be given, for the simulation.</summary>
    internal static WaterProof Draft(Lawn lawn, IReadOnlyList<PatchSummary> patches, SeasonTiming timing, WeatherHistory weather, Choices choices) =>
        Prove(lawn, patches, timing, weather, choices, settle: false).Value!;

    private static Section<WaterProof> Prove(Lawn lawn, IReadOnlyList<PatchSummary> patches, SeasonTiming timing, WeatherHistory weather, Choices? choices, bool settle)
    {
        var (tap, resolved, scene) = Resolve(lawn, patches, timing, weather, choices);
        var tried = WaterTrial.Of(scene, ProofDetail.Times);
        var (trial, failure) = settle ? tried.Settled(scene) : (tried, null);
        IReadOnlyList<Assumption> assumptions = [.. tap.Assumption is { } noTap ? [noTap] : Array.Empty<Assumption>(), .. resolved.Assumptions, .. Assumptions(lawn, scene)];
        var proof = ProofWriting.Of(new ProofParts(lawn, tap, resolved, scene, trial, failure, weather, timing, tap.Assumption is not null || resolved.Assumptions.Count > 0));
        return new Section<WaterProof>(proof, [], assumptions);
    }

    /// <summary>Run by run timetables of the season's phases as the proof has them; for a phase without one, what binds and by how much on each kind of day.</summary>
    /// <param name="proof">The proof of the same lawn.</param>
    /// <param name="lawn">The lawn.</param>
    /// <param name="patches">The patches as the plan sees them; at least one with ground.</param>
    /// <param name="timing">The season's timing.</param>
    /// <param name="weather">Daily weather; only years before the season count.</param>
    /// <param name="choices">The season's choices; null means the seedbed's watering is worked out.</param>
    public static IReadOnlyList<PhaseTimetables> Timetables(
        WaterProof proof,
        Lawn lawn,
        IReadOnlyList<PatchSummary> patches,
        SeasonTiming timing,
        WeatherHistory weather,
        Choices? choices = null)
    {
        ArgumentNullException.ThrowIfNull(proof);
        ArgumentNullException.ThrowIfNull(lawn);
        if (proof.Phases.All(phase => phase.Timetables.Holds))
        {
            return [.. proof.Phases.Select(phase => phase.Timetables)];
        }

        var filled = choices is null ? lawn : SunFilling.Fill(SurveyedPatch.Of(lawn), choices.Season);
        var scene = Resolve(filled, patches, timing, weather, choices).Scene;
        return
        [
            .. WaterFitting.Fit(scene).Zip(proof.Phases, (fit, phase) => phase.Timetables.Holds ? phase.Timetables : PhaseTimetable.Of(scene, fit, ProofDetail.Explained)),
        ];
    }

    private static (TapFacts Tap, SetResolving Resolved, WaterScene Scene) Resolve(Lawn lawn, IReadOnlyList<PatchSummary> patches, SeasonTiming timing, WeatherHistory weather, Choices? choices)
    {
        ArgumentNullException.ThrowIfNull(lawn);
        ArgumentNullException.ThrowIfNull(patches);
        ArgumentNullException.ThrowIfNull(timing);
        if (!patches.Any(p => p.Area.Value > 0.0))
        {
            throw new ArgumentException("at least one patch with ground is needed", nameof(patches));
        }

        var texture = lawn.Soil?.Texture ?? SoilTexture.Loam;
        var tap = TapFacts.Of(lawn.Water);
        var resolved = SetResolving.Of(lawn, patches, tap, texture);
        var phases = timing.Phases.Count > 0 ? timing.Phases : AveragePhases(timing, lawn.Place);
        var beds = Beds(lawn, patches, choices);
        NeedScene On(IReadOnlyList<Phase> dates) => NeedScene.Of(beds, dates, weather, weather.Station ?? lawn.Place, texture, MulchFactor.For(lawn.Cover?.Kind ?? CoverKind.None)) with
        {
            Chosen = choices is null ? SeedbedChoice.None : SeedbedChoice.Of(choices),
        };
        var ground = On(phases) with { Later = day => On(Moved(phases, day)) };
        return (tap, resolved, new WaterScene(resolved.Sets, lawn.Water, resolved.Lines, ground, LawnNeeds.Of(ground)));
    }

    /// <summary>The same phases with the seedbed beginning on another day.</summary>
    private static IReadOnlyList<Phase> Moved(IReadOnlyList<Phase> phases, DateOnly day)
    {
        var days = day.DayNumber - phases.First(p => p.Id == "seedbed").From.DayNumber;
        return [.. phases.Select(p => p with { From = p.From.AddDays(days), To = p.To.AddDays(days) })];
    }

    private static IReadOnlyList<PatchBed> Beds(Lawn lawn, IReadOnlyList<PatchSummary> patches, Choices? choices) =>
    [
        .. patches.Where(p => p.Area.Value > 0.0).Select(summary => new PatchBed(
            summary.Id,
            summary.Name,
            summary.Area.Value,
            SeedbedGround.Of(lawn, lawn.Patches.First(p => p.Id == summary.Id), summary, choices?.Method ?? SeedingMethod.Broadcast))),
    ];

    private static IReadOnlyList<Phase> AveragePhases(SeasonTiming timing, Place place)
    {
        var south = place.LatitudeDeg < 0.0;
        var year = timing.SoilFan.Count > 0 ? timing.SoilFan[0].Date.Year : timing.OtherWindow?.Opens.Year ?? 2001;
        var day = timing.Window?.Best ?? new DateOnly(year, south ? 3 : 9, 1);
        return SeasonPhases.Of(day, SeasonPhases.LeastSeedbedDays, day);
    }

    private static IEnumerable<Assumption> Assumptions(Lawn lawn, WaterScene scene)
    {
        if (lawn.Soil?.Texture is null)
        {
            yield return new Assumption(
                "assumed.water.texture",
                "The soil's texture is not known: loam is assumed.",
                "Sand needs more rounds of less water, clay fewer and shorter cycles.",
                "Squeeze and ribbon a moist handful, or look up the soil survey.");
        }

        if (scene.Ground.Phases.Any(p => p.Demand.Assumed))
        {
            yield return new Assumption(
                "assumed.water.demand",
                "No past weather of these dates is known: a dry early-autumn day is taken to draw 0.18 in (4.6 mm).",
                "Rounds and minutes rest on it.",
                "Give a weather file of the nearest station.");
        }
        else if (!scene.Ground.Simulated)
        {
            yield return new Assumption(
                "assumed.water.seasons",
                $"Fewer than {NeedScene.LeastSeasons} past seasons of these dates are whole: rules of thumb say how much water each phase needs.",
                "They do not know this lawn's shade, slope and cover patch by patch.",
                "Give a weather file with more years.");
        }
    }
}
