using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Timing;

/// <summary>Every past season simulated hour by hour for every seed-down day around the window, patch by patch.</summary>
internal sealed class SimulatedStands
{
    /// <summary>Seasons below which the simulation is not worth its name and rules of thumb serve.</summary>
    internal const int LeastSeasons = 5;

    /// <summary>Days tried before and after the middle of the rule-of-thumb window.</summary>
    internal const int Reach = 60;

    /// <summary>Days simulated before the first seed-down day, so that soil forgets how it was started.</summary>
    internal const int SpinUpDays = 45;

    private readonly SeasonScene _scene;
    private readonly IReadOnlyList<Seedbed> _seedbeds;
    private readonly PlaceSeasons _seasons;
    private readonly IReadOnlyList<StandTable> _tables;
    private readonly DateScores _scores;
    private readonly int _firstDay;

    private SimulatedStands(SeasonScene scene, IReadOnlyList<Seedbed> seedbeds, PlaceSeasons seasons, PaceLearned pace, int firstDay, int days)
    {
        Pace = pace;
        (_scene, _seedbeds, _seasons, _firstDay) = (scene, seedbeds, seasons, firstDay);
        _tables = [.. seedbeds.Select(bed => StandEnsemble.Run(seasons, bed.Ground, bed.Sown, bed.Rounds, new CandidateDays(SpinUpDays, days), Rule))];
        var anyBare = seedbeds.Any(bed => bed.BareM2 > 0.0);
        _scores = DateScores.Of([.. _tables.Zip(seedbeds, (table, bed) => (table, anyBare ? bed.BareM2 : bed.AreaM2))]);
        Outcomes = StandOutcomes.OfShares(Shares(), firstDay, firstDay + days - 1);
    }

    /// <summary>What counts as a stand: 400 plants per sq ft of seedbed with three leaves before 28 degF. Judged.</summary>
    internal static StandRule Rule { get; } = new(PlantsPerM2: 400.0 / 0.09290304, Leaves: StandNeed.Leaves);

    /// <summary>Share of the lawn that stood, by member season and seed-down day.</summary>
    internal StandOutcomes Outcomes { get; }

    /// <summary>What first greens taught.</summary>
    internal PaceLearned Pace { get; }

    internal Working Working => SimulatedWorking.Stand(_scene, _seedbeds, _tables, Rule);

    internal Working EmergenceWorking => SimulatedWorking.Emergence(_seasons.Seasons.Count);

    internal Working CoverWorking => SimulatedWorking.Cover(_seedbeds, _seasons.Seasons.Count);

    internal IReadOnlyList<Assumption> Assumptions => SimulatedWorking.Assumptions;

    /// <summary>The simulation, or null where too few seasons are known or nothing is sown.</summary>
    /// <param name="scene">The season.</param>
    /// <param name="seedbeds">The patches as sown and watered.</param>
    /// <param name="around">The rule-of-thumb window's middle day; dates are tried on both sides of it.</param>
    /// <param name="seedDown">The day seed went or is to go down, where that is settled; first greens are held against it.</param>
    internal static SimulatedStands? Of(SeasonScene scene, IReadOnlyList<Seedbed> seedbeds, int around, DateOnly? seedDown)
    {
        if (scene.Past.Soil is not { } soil || scene.Past.Seasons.Count < LeastSeasons || seedbeds.Count == 0)
        {
            return null;
        }

        var first = Math.Max(0, Math.Min(SeasonCalendar.FirstSeeding, around - Reach));
        var last = Math.Min(SeasonCalendar.Length - 1, Math.Max(SeasonCalendar.LastSeeding, around + Reach));
        var windows = new SceneWindows(scene, soil, first - SpinUpDays);
        var seasons = windows.Seasons();
        var pace = seedDown is { } day && scene.Calendar.Index(day) >= first ? PaceLearned.Of(scene, seedbeds, seasons, first, scene.Calendar.Index(day)) : PaceLearned.Nothing;
        return new SimulatedStands(scene, pace.Pace is { } learned ? [.. seedbeds.Select(bed => bed.At(learned.Multiplier))] : seedbeds, seasons, pace, first, last - first + 1);
    }

    /// <summary>Every day within one paired standard error of the best; null where even the best does worse than <see cref="WindowChoice.LeastShare"/>.</summary>
    internal ChosenWindow? Window(int first, int last) =>
        DateChoice.Of(_scores, Math.Max(0, first - _firstDay), Math.Min(_scores.Dates - 1, last - _firstDay)) is { } window && _scores.Share(window.Best) >= WindowChoice.LeastShare
            ? new ChosenWindow(_firstDay + window.Opens, _firstDay + window.Best, _firstDay + window.Closes)
            : null;

    /// <summary>Middle day by which half the seed of the slowest grass is up on every patch; null where in most seasons it never is.</summary>
    internal int? Emergence(int seedDown) => Spread.Middle(Enumerable.Range(0, _seasons.Seasons.Count).Select(season => LastUp(season, seedDown - _firstDay) is { } days ? seedDown + (int)Math.Ceiling(days) : (int?)null));

    /// <summary>Cover by day from seed-down to the season's end, patch by patch, corrected by what was seen.</summary>
    internal CoverOutlook Cover(int seedDown)
    {
        var (dayInSeason, down) = (SpinUpDays + seedDown - _firstDay, _scene.Calendar.Date(seedDown));
        return CoverOutlook.Of(down, [.. _seedbeds.Select(bed =>
        {
            var seen = CoverSeenOn.Patch(_scene, bed.PatchId, down);
            var variants = seen.Count == 0 ? CoverVariants.Usual : CoverVariants.Wide;
            var members = CoverEnsemble.Run(_seasons, bed.Ground, bed.Sown, bed.Rounds, SpinUpDays, dayInSeason, bed.Stand, Rule, variants);
            return (bed, CoverPosterior.Of(members, seen));
        })]);
    }

    /// <summary>How good the choice of date has been: left-out seasons, hindsight, and the rule of thumb under the same simulation.</summary>
    internal IReadOnlyList<Figure> ChoiceFigures()
    {
        var (first, last) = (SeasonCalendar.FirstSeeding - _firstDay, SeasonCalendar.LastSeeding - _firstDay);
        return SimulatedWorking.Choice(DateChoice.LeaveOneOutSuccess(_scores, first, last), DateChoice.HindsightSuccess(_scores, first, last), _seasons.Seasons.Count);
    }

    private double? LastUp(int season, int date)
    {
        var last = 0.0;
        foreach (var table in _tables)
        {
            if (table[season, date].EmergenceDays is not { } days)
            {
                return null;
            }

            last = Math.Max(last, days);
        }

        return last;
    }

    private double[][] Shares()
    {
        var shares = new double[_scores.Seasons][];
        for (var season = 0; season < shares.Length; season++)
        {
            shares[season] = new double[SeasonCalendar.Length];
            for (var date = 0; date < _scores.Dates; date++)
            {
                shares[season][_firstDay + date] = _scores.Stood(season, date);
            }
        }

        return shares;
    }
}
