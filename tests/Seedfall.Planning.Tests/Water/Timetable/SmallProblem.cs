using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Water.Timetable;

namespace Seedfall.Planning.Tests.Water.Timetable;

/// <summary>Problems small enough to try every timetable.</summary>
internal static class SmallProblem
{
    private static readonly Gen<(int Minutes, int Draw, bool ByHand)> AnySet = Gen.Select(Gen.Int[1, 4], Gen.Int[2, 10], Gen.Int[0, 3], (minutes, draw, hand) => (minutes, draw, hand == 0));

    /// <summary>One to seven sets in one round of ten to sixteen minutes with a ban in the middle.</summary>
    internal static readonly Gen<TimetableProblem> OneRound = Gen.Select(AnySet.Array[1, 7], Gen.Int[10, 16], Gen.Int[3, 12], Gen.Int[0, 3], Gen.Int[0, 15], (sets, end, ban, banned, wish) => Of(
        sets.Select((s, k) => Set(k, s.Minutes, s.Draw, 1, s.ByHand)),
        ban >= end ? [new(0, end)] : [.. new MinuteSpan[] { new(0, ban), new(Math.Min(end, ban + banned), end) }.Where(span => span.To > span.From)],
        [new RoundPart(0, end, Math.Min(wish, end))]));

    /// <summary>One to three sets in two rounds, some in two cycles with four minutes of soaking.</summary>
    internal static readonly Gen<TimetableProblem> TwoRounds = Gen.Select(Gen.Select(AnySet, Gen.Int[1, 2]).Array[1, 3], Gen.Int[8, 11], (sets, half) => Of(
        sets.Select((s, k) => Set(k, Math.Min(3, s.Item1.Minutes), s.Item1.Draw, s.Item2, s.Item1.ByHand)),
        [new(0, 2 * half)],
        [new RoundPart(0, half - 1, half / 2), new RoundPart(half, (2 * half) - 1, half + (half / 2))]));

    internal static TimetableSet Set(int k, int minutes, double drawLpm, int cycles = 1, bool byHand = false) => new()
    {
        Name = $"set {k + 1}",
        PatchIds = [$"patch {k + 1}"],
        Flow = FlowRate.FromLitersPerMinute(drawLpm),
        CycleMinutes = minutes,
        Cycles = cycles,
        SoakMinutes = 4,
        Timer = byHand ? null : $"timer {k + 1}",
    };

    internal static TimetableProblem Of(IEnumerable<TimetableSet> sets, IReadOnlyList<MinuteSpan> allowed, IReadOnlyList<RoundPart> rounds, double tapLpm = 10.0)
    {
        TimetableSet[] all = [.. sets];
        return new TimetableProblem
        {
            Taps = [new TimetableTap("tap", FlowRate.FromLitersPerMinute(tapLpm))],
            Sets = all,
            Timers = [.. all.Select(s => s.Timer).OfType<string>().Distinct().Select(name => new TimetableTimer(name, 4, 16))],
            Rounds = rounds,
            Allowed = MergeTouching(allowed),
            Hands = [new MinuteSpan(0, 1440)],
            MinutesPerTrip = 1,
            GapMinutes = 2,
        };
    }

    private static IReadOnlyList<MinuteSpan> MergeTouching(IReadOnlyList<MinuteSpan> spans) =>
        spans.Count == 2 && spans[0].To == spans[1].From ? [new MinuteSpan(spans[0].From, spans[1].To)] : spans;
}
