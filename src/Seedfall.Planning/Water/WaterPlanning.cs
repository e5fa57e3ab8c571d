using System.Globalization;
using Seedfall.Engine.Soil;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
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
    /// The water proof of the season. The value is never null; where <see cref="SeasonTiming.SeedDown"/> is null the proof is
    /// made for the days an average seeding would take.
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
        Choices? choices = null)
    {
        var (tap, resolved, scene) = Resolve(lawn, patches, timing, weather, choices);
        var fits = WaterFitting.Fit(scene);
        IReadOnlyList<Assumption> assumptions = [.. tap.Assumption is { } noTap ? [noTap] : Array.Empty<Assumption>(), .. resolved.Assumptions, .. Assumptions(lawn, scene)];
        var proof = Proof(lawn, tap, resolved, scene, fits, weather, assumed: tap.Assumption is not null || resolved.Assumptions.Count > 0);
        return new Section<WaterProof>(proof, [], assumptions);
    }

    /// <summary>
    /// Run by run timetables of the season's phases, sets together where the flow allows. Finer than <see cref="Prove"/>: every
    /// opening and every move by hand is a trip, and soaking must find its place among the runs.
    /// </summary>
    /// <param name="lawn">The lawn.</param>
    /// <param name="patches">The patches as the plan sees them; at least one with ground.</param>
    /// <param name="timing">The season's timing.</param>
    /// <param name="weather">Daily weather; only years before the season count.</param>
    /// <param name="choices">The season's choices; null means the seedbed's watering is worked out.</param>
    public static IReadOnlyList<PhaseTimetables> Timetables(
        Lawn lawn,
        IReadOnlyList<PatchSummary> patches,
        SeasonTiming timing,
        WeatherHistory weather,
        Choices? choices = null)
    {
        var (tap, _, scene) = Resolve(lawn, patches, timing, weather, choices);
        return [.. WaterFitting.Fit(scene).Select(fit => PhaseTimetable.Of(scene, fit, tap.Flow))];
    }

    private static (TapFacts Tap, SetResolving Resolved, WaterScene Scene) Resolve(Lawn lawn, IReadOnlyList<PatchSummary> patches, SeasonTiming timing, WeatherHistory weather, Choices? choices)
    {
        if (!patches.Any(p => p.Area.Value > 0.0))
        {
            throw new ArgumentException("at least one patch with ground is needed", nameof(patches));
        }

        var texture = lawn.Soil?.Texture ?? SoilTexture.Loam;
        var tap = TapFacts.Of(lawn.Water);
        var resolved = SetResolving.Of(lawn, patches, tap, texture);
        return (tap, resolved, Scene(lawn, timing, weather, resolved, texture) with { Chosen = choices is null ? SeedbedChoice.None : SeedbedChoice.Of(choices) });
    }

    private static WaterScene Scene(Lawn lawn, SeasonTiming timing, WeatherHistory weather, SetResolving resolved, SoilTexture texture)
    {
        var phases = timing.Phases.Count > 0 ? timing.Phases : AveragePhases(timing, lawn.Place);
        var place = weather.Station ?? lawn.Place;
        return new WaterScene(
            resolved.Sets,
            lawn.Water,
            [.. phases.Select(phase => (phase, Demand.Of(weather, place, phase)))],
            texture,
            MulchFactor.For(lawn.Cover?.Kind ?? CoverKind.None));
    }

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

        if (scene.Phases.Any(p => p.Demand.Assumed))
        {
            yield return new Assumption(
                "assumed.water.demand",
                "No past weather of these dates is known: a dry early-autumn day is taken to draw 0.18 in (4.6 mm).",
                "Rounds and minutes rest on it.",
                "Give a weather file of the nearest station.");
        }
    }

    private static WaterProof Proof(
        Lawn lawn, TapFacts tap, SetResolving resolved, WaterScene scene, IReadOnlyList<PhaseFit> fits, WeatherHistory weather, bool assumed)
    {
        var worst = WaterFitting.Worst(fits);
        var volume = SeasonWater.Volume(fits, weather);
        var seedbed = fits.First(fit => fit.Need.Phase.Id == "seedbed");
        return new WaterProof(
            worst is not null ? ProofResult.Refused : assumed ? ProofResult.Assumed : ProofResult.Holds,
            Sentence(worst, seedbed, assumed),
            [tap.Figure, .. Wetting.Figures(scene, seedbed), .. resolved.Sets.SelectMany(set => set.Figures)],
            [.. fits.Select(PhaseWaterings.Of)],
            worst is null ? null : Shortfall(worst),
            worst is null ? [] : Remedies.For(scene, worst),
            volume,
            SeasonWater.Cost(volume, lawn.Prices?.WaterPerThousandGallons))
        {
            Advice = [.. resolved.Advice, .. WaterAdvice.For(scene, fits)],
        };
    }

    private static string Sentence(PhaseFit? worst, PhaseFit seedbed, bool assumed)
    {
        if (worst is null)
        {
            var holds = string.Create(
                CultureInfo.InvariantCulture,
                $"{seedbed.Need.RoundsPerDay} rounds a day of {seedbed.RoundMinutes} minutes fit the tap and the hours");
            return assumed ? $"If the assumptions hold, the water is enough: {holds}." : $"The water can be put on: {holds}.";
        }

        var name = worst.Need.Phase.Name.ToLowerInvariant();
        var wanted = worst.Need.DaysPerWeek == 7 ? $"{worst.Need.RoundsPerDay} rounds a day" : $"{worst.Need.DaysPerWeek} waterings a week";
        return string.Create(
            CultureInfo.InvariantCulture,
            $"The water cannot be put on as things are: the phase \"{name}\" needs {wanted} of {worst.RoundMinutes} minutes; {Math.Ceiling(worst.ShortRounds):0} of the week's rounds find no allowed time.");
    }

    private static Figure Shortfall(PhaseFit worst) => new("water.shortfall", "Watering time short each week", QuantityKind.Minutes, worst.ShortMinutes, new Working(
        "short = r t",
        [
            new("r", $"rounds a week of the phase \"{worst.Need.Phase.Name}\" that find no allowed time", worst.ShortRounds, ""),
            new("t", "minutes for one round", worst.RoundMinutes, "min"),
        ],
        "this plan's water proof",
        Sureness.Computed));
}
