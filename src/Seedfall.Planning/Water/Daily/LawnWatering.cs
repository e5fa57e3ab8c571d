using Seedfall.Engine.Units;
using Seedfall.Engine.Weather;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Judgment.Survey;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Timing;

namespace Seedfall.Planning.Water;

/// <summary>One patch's watering today, or what is missing for it.</summary>
/// <param name="PatchId">The patch.</param>
/// <param name="PatchName">Its name.</param>
/// <param name="Lack">What keeps it from being worked out.</param>
/// <param name="SeedDown">Day seed went down here; null where it has not.</param>
/// <param name="Plan">Null where something is missing.</param>
/// <param name="Sets">Sets that water it.</param>
public sealed record PatchWatering(string PatchId, string PatchName, WateringLack Lack, DateOnly? SeedDown, DailyPlan? Plan, IReadOnlyList<DailySet> Sets);

/// <summary>What keeps a patch's daily watering from being worked out.</summary>
public enum WateringLack
{
    /// <summary>Nothing.</summary>
    None,

    /// <summary>The log does not say that seed is down.</summary>
    Seed,

    /// <summary>The water proof found no time for a round.</summary>
    Times,

    /// <summary>The new grass is past it.</summary>
    Over,
}

/// <summary>A whole lawn's watering, patch by patch, and as it runs on one tap.</summary>
/// <param name="Today">The day it is worked out for.</param>
/// <param name="Patches">In the lawn's order.</param>
/// <param name="Week">Today and the six days after, as far as any patch is watered.</param>
public sealed record LawnWatering(DateOnly Today, IReadOnlyList<PatchWatering> Patches, IReadOnlyList<TapDay> Week)
{
    /// <summary>Days after seed-down in which new grass is watered by the day.</summary>
    public const int LastDay = 60;

    /// <summary>The watering of a lawn whose plan is made.</summary>
    /// <param name="lawn">The lawn as its notes have it.</param>
    /// <param name="choices">What the plan was made for.</param>
    /// <param name="plan">The plan.</param>
    /// <param name="weather">Past seasons, this one as far as it is known, forecast days behind it.</param>
    /// <param name="log">What was seen and done.</param>
    /// <param name="tables">The trade's tables.</param>
    /// <param name="today">The day at the lawn.</param>
    public static LawnWatering Of(Lawn lawn, Choices choices, RecoveryPlan plan, WeatherHistory weather, FieldLog log, TradeTables tables, DateOnly today)
    {
        ArgumentNullException.ThrowIfNull(plan);
        ArgumentNullException.ThrowIfNull(log);
        var ground = SunFilling.Fill(SurveyedPatch.Of(lawn), choices.Season);
        var places = new Dictionary<DateOnly, DailyPlace>();
        IReadOnlyList<PatchWatering> patches = [.. ground.Patches.Select(patch => One(patch))];
        return new LawnWatering(today, patches, TapDay.Week(ground, patches));

        PatchWatering One(Patch patch)
        {
            var bare = new PatchWatering(patch.Id, patch.Name, WateringLack.Seed, null, null, []);
            if (log.Standing.OfType<LogEntry.SeededDown>().LastOrDefault(e => e.Day.Year == choices.Season && e.Day <= today && (e.PatchId ?? patch.Id) == patch.Id) is not { Day: var down })
            {
                return bare;
            }

            if (today.DayNumber - down.DayNumber > LastDay)
            {
                return bare with { Lack = WateringLack.Over, SeedDown = down };
            }

            var (rounds, sets) = (SeedbedRounds.Of(plan.Water, patch.Id, lawn.Water), DailySet.Of(ground, plan.Patches, patch.Id));
            if (rounds.HoursOfDay.Count == 0 || sets.Count == 0)
            {
                return bare with { Lack = WateringLack.Times, SeedDown = down };
            }

            var place = places.TryGetValue(down, out var known) ? known : places[down] = DailyPlace.Of(weather, lawn.Place, down);
            var scene = new DailyScene(
                place,
                patch.Id,
                SeedbedGround.Of(ground, patch, plan.Patches.First(p => p.Id == patch.Id), choices.Method),
                sets,
                rounds.HoursOfDay,
                rounds.DepthMm,
                SpeciesTraits.Germination(Slowest(patch, plan, tables)),
                down,
                today,
                weather,
                log,
                lawn.Prices?.WaterPerThousandGallons)
            {
                Meter = lawn.Water?.Meter,
                HouseholdPerPeriod = lawn.Water?.HouseholdPerMonth ?? Volume.Zero,
                Clock = plan.Water.Phases.First(p => p.PhaseId == "seedbed").Starts,
            };
            return new PatchWatering(patch.Id, patch.Name, WateringLack.None, down, DailyWatering.Today(scene), sets);
        }
    }

    /// <summary>The grass that germinates last among those sown on the patch.</summary>
    private static SpeciesFacts Slowest(Patch patch, RecoveryPlan plan, TradeTables tables)
    {
        var mix = plan.Seed?.Mixes.FirstOrDefault(m => m.PatchIds.Contains(patch.Id))?.Parts ?? plan.Seed?.Mix;
        return (mix?.Select(part => part.Species) ?? patch.Grasses).Select(tables.For).MaxBy(facts => facts.HydrothermalTime.Value)!;
    }
}
