using System.Globalization;
using Seedfall.Engine.Weather;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Water;

/// <summary>What a proof is written from.</summary>
/// <param name="Failure">What forbids the worst phase; null where all hold, or where it was not looked into.</param>
internal sealed record ProofParts(
    Lawn Lawn, TapFacts Tap, SetResolving Resolved, WaterScene Scene, WaterTrial Trial, TimetableProof? Failure, WeatherHistory Weather, SeasonTiming Timing, bool Assumed);

/// <summary>A trial as the water proof states it.</summary>
internal static class ProofWriting
{
    internal static WaterProof Of(ProofParts parts)
    {
        var (scene, trial) = (parts.Scene, parts.Trial);
        var worst = trial.Worst;
        var failing = parts.Failure ?? worst?.Times.Proofs.First(day => day.Proof is not TimetableProof.Found).Proof;
        var fits = trial.Phases.Select(phase => phase.Fit).ToList();
        var seedbed = trial.Phase("seedbed");
        var volume = SeasonWater.Volume(fits, parts.Weather);
        return new WaterProof(
            Result(trial, parts.Assumed),
            worst is null ? HoldingSentence(seedbed, parts.Assumed) : FailingSentence(worst, failing!),
            [parts.Tap.Figure, .. scene.Lines.Figures, .. Wetting.Figures(scene, seedbed.Fit), .. parts.Resolved.Sets.SelectMany(set => set.Figures)],
            [.. trial.Phases.Select(PhaseWaterings.Of)],
            worst is null ? null : Shortfall(worst),
            parts.Failure is null ? [] : Remedies.For(scene, trial, worst!, parts.Timing),
            volume,
            SeasonWater.Cost(volume, fits, parts.Lawn))
        {
            Advice = [.. parts.Resolved.Advice, .. WaterAdvice.For(scene, fits)],
            Limits = failing is TimetableProof.Impossible impossible ? [.. impossible.Limits.Where(Worth)] : [],
            Unserved = failing switch
            {
                TimetableProof.Impossible none => none.Unserved,
                TimetableProof.NotProven open => open.Unserved,
                _ => [],
            },
        };
    }

    private static ProofResult Result(WaterTrial trial, bool assumed) => trial.Worst switch
    {
        null => assumed ? ProofResult.Assumed : ProofResult.Holds,
        { Times.Refused: true } => ProofResult.Refused,
        _ => ProofResult.NotProven,
    };

    /// <summary>False for rounds moved so far out of their part of the day that they would no longer keep the seedbed wet: two hours, assumed.</summary>
    private static bool Worth(BindingLimit limit) => limit.Limit != TimetableLimit.Parts || limit.Enough.Value <= 120.0;

    private static string HoldingSentence(TriedPhase seedbed, bool assumed)
    {
        var minutes = PhaseWaterings.RoundMinutes(seedbed);
        var rounds = seedbed.Fit.Need.RoundsPerDay;
        var holds = string.Create(CultureInfo.InvariantCulture, $"{rounds} round{(rounds == 1 ? "" : "s")} a day of {minutes} minutes fit{(rounds == 1 ? "s" : "")} the tap and the hours");
        return assumed ? $"If the assumptions hold, the water is enough: {holds}." : $"The water can be put on: {holds}.";
    }

    private static string FailingSentence(TriedPhase worst, TimetableProof failing)
    {
        var need = worst.Fit.Need;
        var name = need.Phase.Name.ToLowerInvariant();
        var wanted = need.DaysPerWeek == 7 ? $"{need.RoundsPerDay} round{(need.RoundsPerDay == 1 ? "" : "s")} a day" : need.DaysPerWeek == 1 ? "one watering a week" : $"{need.DaysPerWeek} waterings a week";
        var asks = string.Create(CultureInfo.InvariantCulture, $"the phase \"{name}\" needs {wanted} of {worst.Fit.RoundMinutes} minutes");
        return failing switch
        {
            TimetableProof.Impossible impossible => $"The water cannot be put on as things are: {asks}. {impossible.Reason}",
            TimetableProof.NotProven open => $"It is not proven that the water can be put on, nor that it cannot: {asks}. {open.Reason}",
            _ => throw new ArgumentOutOfRangeException(nameof(failing), failing.GetType().Name, "is not a failure"),
        };
    }

    private static Figure Shortfall(TriedPhase worst) => new("water.shortfall", "Watering time short each week", QuantityKind.Minutes, worst.MissingRounds * worst.Fit.RoundMinutes, new Working(
        "short = r t",
        [
            new("r", $"rounds a week of the phase \"{worst.Fit.Need.Phase.Name}\" that find no allowed time, one at least for each day without a timetable", worst.MissingRounds, ""),
            new("t", "minutes for one round", worst.Fit.RoundMinutes, "min"),
        ],
        "this plan's water proof",
        Sureness.Computed));
}
