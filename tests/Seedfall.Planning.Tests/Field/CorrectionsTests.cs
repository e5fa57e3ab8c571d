using CsCheck;
using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Tests.Field;

/// <summary>Which record of an application holds, whatever order the records came in.</summary>
public sealed class CorrectionsTests
{
    private static readonly DateTimeOffset At = new(2026, 9, 8, 7, 30, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void A_correction_takes_the_place_of_what_it_corrects()
    {
        var log = FieldLog.Of([Record(1), Record(2, replaces: 1), Record(3)]);
        Assert.Equal([2, 3], Standing(log));
        Assert.Equal(EntryState.Replaced, log.StateOf(Record(1)));
        Assert.Empty(log.Clashes);
    }

    [Fact]
    public void Of_a_chain_the_last_stands_and_a_link_struck_in_the_middle_brings_nothing_back()
    {
        LogEntry[] chain = [Record(1), Record(2, replaces: 1), Record(3, replaces: 2)];
        Assert.Equal([3], Standing(FieldLog.Of(chain)));
        Assert.Equal([3], Standing(FieldLog.Of([.. chain, Strike(9, of: 2)])));
        Assert.Equal([2], Standing(FieldLog.Of([.. chain, Strike(9, of: 3)])));
        Assert.Equal([1], Standing(FieldLog.Of([.. chain, Strike(8, of: 2), Strike(9, of: 3)])));
    }

    [Fact]
    public void A_struck_first_record_leaves_its_correction_standing() =>
        Assert.Equal([2], Standing(FieldLog.Of([Record(1), Record(2, replaces: 1), Strike(9, of: 1)])));

    [Fact]
    public void Two_phones_that_correct_one_record_both_stand_and_are_shown()
    {
        LogEntry[] both = [Record(1), Record(2, replaces: 1), Record(3, replaces: 1)];
        var log = FieldLog.Of(both);
        Assert.Equal([2, 3], Standing(log));
        var clash = Assert.Single(log.Clashes);
        Assert.Equal((Id(1), 2), (clash.First, clash.Rivals.Count));
        Assert.Empty(FieldLog.Of([.. both, Strike(9, of: 3)]).Clashes);
        Assert.Equal([2], Standing(FieldLog.Of([.. both, Strike(9, of: 3)])));
    }

    [Fact]
    public void Two_corrections_of_a_record_that_has_not_arrived_clash_too()
    {
        var clash = Assert.Single(FieldLog.Of([Record(2, replaces: 1), Record(4, replaces: 2), Record(3, replaces: 1)]).Clashes);
        Assert.Equal([Id(3), Id(4)], clash.Rivals.Select(r => r.Id));
    }

    [Fact]
    public void Links_that_make_no_sense_count_for_nothing()
    {
        Assert.Equal([1, 2], Standing(FieldLog.Of([Record(1, replaces: 2), Record(2, replaces: 1)])));
        Assert.Equal([1], Standing(FieldLog.Of([Record(1, replaces: 1)])));
        Assert.Equal([1, 2], Standing(FieldLog.Of([new LogEntry.Note("dew") { Id = Id(1), At = At }, Record(2, replaces: 1)])));
        Assert.Equal([2, 3], Standing(FieldLog.Of([Record(1, replaces: 2), Record(2, replaces: 1), Record(3, replaces: 1)])));
    }

    [Fact]
    public void Order_and_repetition_play_no_part() => Gen.Select(Entries, Gen.Int[0, 1000]).Sample((entries, seed) =>
    {
        var (log, mixed) = (FieldLog.Of(entries), FieldLog.Of(Mixed([.. entries, .. entries], seed)));
        Assert.Equal(log.Entries.Select(e => e.Id), mixed.Entries.Select(e => e.Id));
        Assert.Equal(log.Standing.Select(e => e.Id), mixed.Standing.Select(e => e.Id));
        Assert.Equal(log.Clashes.Select(Named), mixed.Clashes.Select(Named));
    });

    [Fact]
    public void Every_application_with_a_record_not_struck_stands_and_once_unless_shown_as_a_clash() => Entries.Sample(entries =>
    {
        var log = FieldLog.Of(entries);
        var struck = entries.OfType<LogEntry.Struck>().Select(s => s.EntryId).ToHashSet();
        foreach (var same in entries.OfType<LogEntry.Applied>().GroupBy(e => Root(entries, e)))
        {
            var standing = same.Count(e => log.StateOf(e) is EntryState.Stands);
            Assert.Equal(same.All(e => struck.Contains(e.Id)), standing == 0);
            Assert.Equal(standing > 1, log.Clashes.Any(c => c.First == same.Key));
        }
    });

    /// <summary>Up to twelve records, each the first of its application or a correction of an earlier one, and some strikes.</summary>
    private static readonly Gen<LogEntry[]> Entries =
        Gen.Select(Gen.Int[0, 11].Array[1, 12], Gen.Int[1, 14].Array[0, 5]).Select((links, strikes) => (LogEntry[])
        [
            .. links.Select((to, i) => to < i ? Record(i + 1, replaces: to + 1) : Record(i + 1)),
            .. strikes.Select((of, i) => Strike(100 + i, of)),
        ]);

    private static Guid Root(LogEntry[] entries, LogEntry.Applied entry)
    {
        while (entry.What.Replaces is { } earlier)
        {
            entry = entries.OfType<LogEntry.Applied>().Single(e => e.Id == earlier);
        }

        return entry.Id;
    }

    private static string Named(CorrectionClash clash) => $"{clash.First}: {string.Join(", ", clash.Rivals.Select(r => r.Id))}";

    private static LogEntry[] Mixed(LogEntry[] entries, int seed)
    {
        var mixed = (LogEntry[])entries.Clone();
        new Random(seed).Shuffle(mixed);
        return mixed;
    }

    private static int[] Standing(FieldLog log) => [.. log.Standing.Select(e => BitConverter.ToInt32(e.Id.ToByteArray()))];

    private static LogEntry.Applied Record(int id, int? replaces = null) => new(new Application
    {
        Kind = ApplicationKind.Fertilizer,
        Product = "balanced 12-12-12 starter",
        Amount = new(Mass.FromPounds(10.0), null),
        Area = Area.FromSquareFeet(1000.0),
        Replaces = replaces is { } earlier ? Id(earlier) : null,
        Why = replaces is null ? null : "weighed again",
    })
    { Id = Id(id), At = At };

    private static LogEntry.Struck Strike(int id, int of) => new(Id(of), "wrong lawn") { Id = Id(id), At = At.AddDays(1) };

    private static Guid Id(int n) => new(n, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1);
}
