using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>Each limit loosened by itself, as little as makes a timetable possible.</summary>
internal static class Loosening
{
    /// <summary>Work for one question to the solver.</summary>
    private const double Work = 0.02;

    /// <summary>Work for all questions about one limit.</summary>
    private const double WorkPerLimit = 0.04;

    private const double StepLpm = 0.1;

    /// <summary>Limits that can mend it alone, in the order of <see cref="TimetableLimit"/>.</summary>
    internal static IReadOnlyList<BindingLimit> Of(TimetableProblem problem) => [.. Ways(problem).Select(way => Least(problem, way)).OfType<BindingLimit>()];

    /// <summary>A limit, the problem with it loosened by so many steps, the most steps that change anything, and how a step is said.</summary>
    private sealed record Way(TimetableLimit Limit, Func<int, TimetableProblem> Loosened, int Most, Func<double, string> Sentence, QuantityKind Kind, double Step);

    private static IEnumerable<Way> Ways(TimetableProblem problem)
    {
        var draws = problem.Sets.Sum(set => set.Flow.LitersPerMinute) + problem.Taps.Sum(tap => tap.Reserved.LitersPerMinute + tap.Household.Sum(use => use.Flow.LitersPerMinute));
        var flowSteps = (int)Math.Ceiling(draws / StepLpm) + 1;
        yield return new Way(TimetableLimit.Flow, steps => MoreFlow(problem, steps * StepLpm), flowSteps, Say($"Every tap giving {{1:0.0}} gpm ({{0:0.0}} L/min) more would be enough."), QuantityKind.FlowRate, StepLpm);
        var horizon = problem.Days * WateringHours.MinutesPerDay;
        yield return new Way(TimetableLimit.Hours, steps => problem with { Allowed = Wider(problem.Allowed, problem, steps) }, horizon, Say("Allowed hours that open {0:0} min earlier and close {0:0} min later would be enough."), QuantityKind.Minutes, 1.0);
        if (problem.Sets.Any(set => set.Timer is null || set.Positions > 1))
        {
            yield return new Way(TimetableLimit.Hands, steps => problem with { Hands = Wider(problem.Hands, problem, steps) }, horizon, Say("Somebody there {0:0} min earlier and {0:0} min later would be enough."), QuantityKind.Minutes, 1.0);
        }

        if (problem.Timers.Count > 0)
        {
            var mostStarts = problem.Rounds.Count * problem.Sets.Max(set => set.Cycles * set.Positions);
            yield return new Way(TimetableLimit.TimerStarts, steps => problem with { Timers = [.. problem.Timers.Select(t => t with { StartsPerDay = t.StartsPerDay + steps })] }, mostStarts, Say("A timer with {0:0} more starts a day would be enough."), QuantityKind.Count, 1.0);
            yield return new Way(TimetableLimit.TimerPrograms, steps => problem with { Timers = [.. problem.Timers.Select(t => t with { Programs = t.Programs + steps })] }, problem.Sets.Count, Say("A timer with {0:0} more programs would be enough."), QuantityKind.Count, 1.0);
        }

        if (problem.Taps.Any(tap => tap.Well is not null))
        {
            yield return new Way(TimetableLimit.Well, steps => MoreRecovery(problem, steps * StepLpm), flowSteps, Say("A well that gives back {1:0.0} gpm ({0:0.0} L/min) more would be enough."), QuantityKind.FlowRate, StepLpm);
        }

        yield return new Way(TimetableLimit.Parts, steps => problem with { Rounds = [.. problem.Rounds.Select(r => r with { From = Math.Max(0, r.From - steps), To = Math.Min(horizon, r.To + steps) })] }, horizon, Say("Rounds that may start {0:0} min sooner or later than their part of the day would be enough."), QuantityKind.Minutes, 1.0);
    }

    private static Func<double, string> Say(string format) => amount => string.Format(CultureInfo.InvariantCulture, format, amount, new FlowRate(amount).GallonsPerMinute);

    private static TimetableProblem MoreFlow(TimetableProblem problem, double moreLpm) => problem with
    {
        Taps = [.. problem.Taps.Select(tap => tap with { Flow = tap.Flow + new FlowRate(moreLpm) })],
        Main = problem.Main is { } main ? main + new FlowRate(moreLpm * problem.Taps.Count) : null,
    };

    private static TimetableProblem MoreRecovery(TimetableProblem problem, double moreLpm) => problem with
    {
        Taps = [.. problem.Taps.Select(tap => tap with { Well = tap.Well is { } well ? well with { Recovery = well.Recovery + new FlowRate(moreLpm) } : null })],
    };

    /// <summary>Spans grown to both sides and merged; from the rounds' wishes where there are none.</summary>
    private static IReadOnlyList<MinuteSpan> Wider(IReadOnlyList<MinuteSpan> spans, TimetableProblem problem, int minutes)
    {
        var seeds = spans.Count > 0 ? spans : [.. problem.Rounds.Select(round => new MinuteSpan(round.Wish, round.Wish))];
        var wide = new List<MinuteSpan>();
        foreach (var span in seeds.Select(s => new MinuteSpan(Math.Max(0, s.From - minutes), Math.Min(problem.Days * WateringHours.MinutesPerDay, s.To + minutes))).Where(s => s.To > s.From).OrderBy(s => s.From))
        {
            if (wide.Count > 0 && span.From <= wide[^1].To)
            {
                wide[^1] = wide[^1] with { To = Math.Max(wide[^1].To, span.To) };
            }
            else
            {
                wide.Add(span);
            }
        }

        return wide;
    }

    /// <summary>Halves between an amount that is enough and one that is not shown to be; null where none is.</summary>
    private static BindingLimit? Least(TimetableProblem problem, Way way)
    {
        var budget = new WorkBudget(WorkPerLimit);
        if (Decision.Of(way.Loosened(way.Most), budget, Work, wanted: false).Placement is null)
        {
            return null;
        }

        var (low, enough, refuted) = (0, way.Most, 0);
        while (enough - low > 1)
        {
            var middle = low + ((enough - low) / 2);
            var decided = Decision.Of(way.Loosened(middle), budget, Work, wanted: false);
            if (decided.Placement is not null)
            {
                enough = middle;
            }
            else
            {
                (low, refuted) = (middle, decided.Refuted ? middle : refuted);
            }
        }

        return new BindingLimit(
            way.Limit,
            way.Sentence(enough * way.Step),
            Amount(way, "enough", "Enough, with all else as it is", enough),
            refuted > 0 ? Amount(way, "not-enough", "Shown not to be enough", refuted) : null);
    }

    private static Figure Amount(Way way, string name, string label, int steps) => new(
        $"water.timetable.{Slug(way.Limit)}.{name}", label, way.Kind, steps * way.Step, new Working(
            "the timetable looked for again with this one limit loosened, halving the amount until a step decides",
            [new("step", "fineness of the search", way.Step, way.Kind == QuantityKind.FlowRate ? "L/min" : way.Kind == QuantityKind.Minutes ? "min" : "")],
            "this plan's timetable",
            Sureness.Computed));

    private static string Slug(TimetableLimit limit) => limit switch
    {
        TimetableLimit.TimerStarts => "timer-starts",
        TimetableLimit.TimerPrograms => "timer-programs",
        _ => limit.ToString().ToLowerInvariant(),
    };
}
