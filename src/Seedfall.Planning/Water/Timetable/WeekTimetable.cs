using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Timetable;

/// <summary>A proof for each kind of day of the week.</summary>
/// <param name="Days">Days with the same allowed hours share one proof; Monday's kind first.</param>
/// <param name="MoreDays">How many more days would have to be given the hours of a day that works; null where none is needed, or none works.</param>
public sealed record WeekTimetable(IReadOnlyList<DayTimetable> Days, BindingLimit? MoreDays)
{
    /// <summary>True where every day has its timetable.</summary>
    public bool Holds => Days.All(day => day.Proof is TimetableProof.Found);
}

/// <summary>The days that share a proof.</summary>
public sealed record DayTimetable(WeekDays Days, TimetableProof Proof);

/// <summary>Timetables of a week from the hours allowed on each day.</summary>
public static class WeekTimetabling
{
    /// <summary>Minute of the day seldom rounds are wished for: 6:00, before wind and heat. Common practice, no source read.</summary>
    private const int EarlyWish = 6 * 60;

    /// <summary>Daily rounds: every day by itself, since tomorrow's rounds do not make up for today's.</summary>
    /// <param name="day">One day's problem; its allowed minutes are not read.</param>
    /// <param name="allowed">Allowed minutes by day, Monday to Sunday.</param>
    public static WeekTimetable Daily(TimetableProblem day, IReadOnlyList<IReadOnlyList<MinuteSpan>> allowed) => Daily(day, allowed, ProofDetail.Explained, null);

    /// <summary>The same with so much asked and so much work left for it.</summary>
    internal static WeekTimetable Daily(TimetableProblem day, IReadOnlyList<IReadOnlyList<MinuteSpan>> allowed, ProofDetail detail, WorkBudget? budget)
    {
        Check(allowed);
        var kinds = Enumerable.Range(0, allowed.Count).GroupBy(d => string.Join(';', allowed[d].Select(s => FormattableString.Invariant($"{s.From}-{s.To}")))).ToArray();
        DayTimetable[] days =
        [
            .. kinds.Select(kind => new DayTimetable(
                kind.Aggregate(WeekDays.None, (sum, d) => sum | WateringHours.Week[d]),
                TimetablePlanning.Prove(day with { Allowed = allowed[kind.First()], Days = 1 }, detail, budget))),
        ];
        var failing = kinds.Where((_, k) => days[k].Proof is not TimetableProof.Found).Sum(kind => kind.Count());
        return new WeekTimetable(days, failing is > 0 and < 7 ? MoreDays(failing, days.First(d => d.Proof is TimetableProof.Found).Days) : null);
    }

    /// <summary>Seldom rounds: spread over the week set by set, each set's rounds evenly apart.</summary>
    /// <param name="day">One day's problem; its rounds and allowed minutes are not read, hands and household are each day's.</param>
    /// <param name="allowed">Allowed minutes by day, Monday to Sunday.</param>
    /// <param name="roundsPerWeek">Rounds a week, 1 to 7.</param>
    public static TimetableProof Seldom(TimetableProblem day, IReadOnlyList<IReadOnlyList<MinuteSpan>> allowed, int roundsPerWeek) => Seldom(day, allowed, roundsPerWeek, ProofDetail.Explained, null);

    /// <summary>The same with so much asked and so much work left for it.</summary>
    internal static TimetableProof Seldom(TimetableProblem day, IReadOnlyList<IReadOnlyList<MinuteSpan>> allowed, int roundsPerWeek, ProofDetail detail, WorkBudget? budget)
    {
        Check(allowed);
        ArgumentOutOfRangeException.ThrowIfLessThan(roundsPerWeek, 1);
        ArgumentOutOfRangeException.ThrowIfGreaterThan(roundsPerWeek, 7);
        var week = 7 * WateringHours.MinutesPerDay;
        return TimetablePlanning.Prove(day with
        {
            Days = 7,
            Allowed = Merged(allowed),
            Hands = Merged([.. allowed.Select(_ => day.Hands)]),
            Taps = [.. day.Taps.Select(tap => tap with { Household = [.. Enumerable.Range(0, 7).SelectMany(d => tap.Household, (d, use) => use with { When = Shifted(use.When, d) })] })],
            Rounds = [.. Enumerable.Range(0, roundsPerWeek).Select(k => new RoundPart(0, week, ((int)((k + 0.5) * 7.0 / roundsPerWeek) * WateringHours.MinutesPerDay) + EarlyWish))],
            GapMinutes = Math.Max(day.GapMinutes, ((7 / roundsPerWeek) - 1) * WateringHours.MinutesPerDay),
        }, detail, budget);
    }

    private static BindingLimit MoreDays(int failing, WeekDays like) => new(
        TimetableLimit.Days,
        $"{failing} more day{(failing == 1 ? "" : "s")} a week with the hours of {like} would be enough.",
        Days("enough", "More days with those hours, enough", failing),
        Days("not-enough", "One fewer leaves a day without its rounds", failing - 1));

    private static Figure Days(string name, string label, int days) => new($"water.timetable.days.{name}", label, QuantityKind.Count, days, new Working(
        "days of the week that have no timetable",
        [new("n", "days", days, "d")],
        "each day of the week proved by itself",
        Sureness.Computed));

    /// <summary>Each day's spans behind one another, joined where they meet at midnight.</summary>
    private static IReadOnlyList<MinuteSpan> Merged(IReadOnlyList<IReadOnlyList<MinuteSpan>> byDay)
    {
        var spans = new List<MinuteSpan>();
        foreach (var span in byDay.SelectMany((day, d) => day.Select(s => Shifted(s, d))))
        {
            if (spans.Count > 0 && spans[^1].To == span.From)
            {
                spans[^1] = spans[^1] with { To = span.To };
            }
            else
            {
                spans.Add(span);
            }
        }

        return spans;
    }

    private static MinuteSpan Shifted(MinuteSpan span, int day) => new(span.From + (day * WateringHours.MinutesPerDay), span.To + (day * WateringHours.MinutesPerDay));

    private static void Check(IReadOnlyList<IReadOnlyList<MinuteSpan>> allowed)
    {
        ArgumentNullException.ThrowIfNull(allowed);
        if (allowed.Count != 7)
        {
            throw new ArgumentException("seven days of allowed minutes are needed", nameof(allowed));
        }
    }
}
