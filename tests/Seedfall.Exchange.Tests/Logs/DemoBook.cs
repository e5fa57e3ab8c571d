using Seedfall.Engine.Units;
using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;

namespace Seedfall.Exchange.Tests.Logs;

/// <summary>An invented book: a spray corrected once, a starter, one struck, two phones that disagree, over two years.</summary>
internal static class DemoBook
{
    public static readonly DateTimeOffset At = new(2026, 9, 8, 7, 30, 0, TimeSpan.FromHours(-5));

    public static readonly Lawn Lawn = DemoTown.Lawns[0] with { Address = "1 Invented Road, Nowhere 00000", Owner = "the owner", RulePack = "us-oh", AppliedForHire = true };

    public static readonly FieldLog Log = FieldLog.Of(
    [
        Entry(1, Applications.Whole with { Target = null }),
        Entry(2, Applications.Whole with { Replaces = Id(1), Why = "the target was left out" }),
        Entry(3, Applications.Least with { Actives = [new("nitrogen", Mass.FromPounds(3.0))] }, At.AddHours(-1)),
        Entry(4, Applications.Least with { Product = "=1+1, a \"product\"" }, At.AddDays(1)),
        new LogEntry.Struck(Id(4), "typed on the wrong lawn") { Id = Id(9), At = At.AddDays(2) },
        Entry(5, Applications.Least, At.AddDays(15)),
        Entry(6, Applications.Least with { Amount = new(Mass.FromPounds(12.0), null), Replaces = Id(5), Why = "weighed again" }, At.AddDays(15)),
        Entry(7, Applications.Least with { Amount = new(Mass.FromPounds(13.0), null), Replaces = Id(5), Why = "the bag was short" }, At.AddDays(15)),
        Entry(8, Applications.Least with { Product = "urea 46-0-0" }, At.AddYears(-1)),
    ]);

    public static RecordBook Book => RecordBook.Of(Lawn, Log, Trade.Tables.Pack(Lawn.RulePack)!);

    public static LogEntry.Applied Entry(int id, Application what, DateTimeOffset? at = null) => new(what with { Ended = what.Ended is null ? null : At.AddMinutes(35) }) { Id = Id(id), At = at ?? At };

    public static Guid Id(int n) => new(n, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1);
}
