using Seedfall.Engine.Units;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;
using Seedfall.Planning.Tests.Plan;

namespace Seedfall.Planning.Tests.Field;

/// <summary>Two phones on one lawn: what cannot all hold is shown, and everything stays.</summary>
public sealed class LogConflictsTests
{
    private static readonly Lawn Lawn = Lawns.Known(InventedWeather.North);

    private static readonly DateTimeOffset Eight = new(2023, 9, 8, 8, 0, 0, TimeSpan.FromHours(-5));

    [Fact]
    public void Seed_down_on_two_days_is_a_conflict_until_one_is_struck()
    {
        var (first, second) = (Down(Eight), Down(Eight.AddDays(1)));
        var conflict = Assert.Single(LogConflicts.In(Lawn, FieldLog.Of([first, second])));
        Assert.Equal("Seed down is written for Sep 8 and Sep 9. The plan goes by the later one. Strike what does not hold.", conflict.Sentence);
        Assert.Equal([first, second], conflict.Entries);
        var strike = new LogEntry.Struck(second.Id, "was the neighbor's") { Id = Guid.NewGuid(), At = Eight.AddDays(2) };
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([first, second, strike])));
    }

    [Fact]
    public void A_seeding_anew_and_another_patch_are_none()
    {
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([Down(Eight), Down(Eight.AddDays(60))])));
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([Down(Eight), Down(Eight.AddDays(2)) with { PatchId = "front" }])));
    }

    [Fact]
    public void One_thing_written_by_two_phones_is_pointed_out()
    {
        LogEntry Water(double minutesLater, double minutes) => new LogEntry.Watered { Id = Guid.NewGuid(), At = Eight.AddMinutes(minutesLater), Minutes = minutes };
        Assert.Contains("at 8:00 and 8:07", Assert.Single(LogConflicts.In(Lawn, FieldLog.Of([Water(0, 10), Water(7, 10)]))).Sentence, StringComparison.Ordinal);
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([Water(0, 10), Water(7, 12)])));
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([Water(0, 10), Water(180, 10)])));
        LogEntry Fed(double later, string product) => new LogEntry.Applied(new Application { Kind = ApplicationKind.Fertilizer, Product = product, Amount = new(Mass.FromPounds(20), null), Area = Area.FromSquareFeet(2000) }) { Id = Guid.NewGuid(), At = Eight.AddMinutes(later) };
        Assert.Single(LogConflicts.In(Lawn, FieldLog.Of([Fed(0, "12-12-12 starter"), Fed(30, "12-12-12 Starter")])));
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([Fed(0, "12-12-12 starter"), Fed(30, "46-0-0")])));
    }

    [Fact]
    public void Two_corrections_of_one_record_are_shown_first_until_one_is_struck()
    {
        LogEntry.Applied Sprayed(double later, Guid? replaces, double floz) => new(new Application
        {
            Kind = ApplicationKind.Pesticide,
            Product = "mesotrione 4 lb/gal",
            Amount = new(null, Volume.FromFluidOunces(floz)),
            Area = Area.FromSquareFeet(2000),
            Replaces = replaces,
            Why = replaces is null ? null : "measured again",
        })
        { Id = Guid.NewGuid(), At = Eight.AddMinutes(later) };
        var first = Sprayed(0, null, 0.23);
        var (one, other) = (Sprayed(1, first.Id, 0.2), Sprayed(2, first.Id, 0.25));
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([first, one])));
        var found = LogConflicts.In(Lawn, FieldLog.Of([first, one, other, Down(Eight), Down(Eight.AddDays(1))]));

        // Once only: two corrections are not also two sprayings.
        Assert.Equal(2, found.Count);
        Assert.Equal([one, other], found[0].Entries);
        Assert.Equal("2 records correct one and the same application, each in its own way: mesotrione 4 lb/gal. All of them count until all but one are struck.", found[0].Sentence);
        Assert.Empty(LogConflicts.In(Lawn, FieldLog.Of([first, one, other, new LogEntry.Struck(one.Id, "read wrong") { Id = Guid.NewGuid(), At = Eight.AddDays(1) }])));
    }

    private static LogEntry.SeededDown Down(DateTimeOffset at) => new() { Id = Guid.NewGuid(), At = at };
}
