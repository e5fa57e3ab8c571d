using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;
using Seedfall.Planning.Rules;
using Seedfall.Planning.Tests.Plan;
using Tables = Seedfall.Planning.Tests.Rules.Tables;

namespace Seedfall.Planning.Tests.Records;

/// <summary>What is left with the customer and put up on the lawn, as the states whose rules were read ask it.</summary>
public sealed class NoticeTests
{
    private static readonly Lawn Lawn = Lawns.Known(InventedWeather.North);

    private static readonly LogEntry.Applied Entry = new(new Application
    {
        Kind = ApplicationKind.Pesticide,
        Product = "mesotrione 4 lb/gal",
        Amount = new(null, Volume.FromFluidOunces(0.5)),
        Area = Area.FromSquareFeet(2000.0),
        Reentry = "until sprays have dried",
    })
    { Id = Guid.NewGuid(), At = new DateTimeOffset(2026, 9, 8, 7, 30, 0, TimeSpan.FromHours(-5)) };

    [Fact]
    public void Sizes_heights_and_times_are_those_of_the_law()
    {
        // 357 IAC 1-5-2: at least 4 by 5 in, letters 3/8 in, 6 to 18 in above the turf, down no sooner than the next day.
        var indiana = Tables.Shipped.Pack("us-in")!.LawnFlag!;
        Assert.Equal((4.0, 5.0, 0.375, 6.0, 18.0, true), (indiana.LeastHeightInches, indiana.LeastWidthInches, indiana.LeastLetterInches!.Value, indiana.LeastAboveGroundInches, indiana.MostAboveGroundInches!.Value, indiana.UntilNextDay));

        // New York ECL 33-1003: at least 4 by 5 in, at least 12 in above the ground, 24 hours, letters 3/8 in; 33-1004: 48 hours.
        var york = Tables.Shipped.Pack("us-ny")!.LawnFlag!;
        Assert.Equal((4.0, 5.0, 0.375, 12.0, 24.0, 48.0), (york.LeastHeightInches, york.LeastWidthInches, york.LeastLetterInches!.Value, york.LeastAboveGroundInches, york.StandHours!.Value, york.NeighborHours!.Value));

        // Ohio State University on Ohio's rules: 5 by 4 in, bottom edge 14 in, 24 hours, neighbors one business day before.
        var ohio = Tables.Shipped.Pack("us-oh")!.LawnFlag!;
        Assert.Equal((4.0, 5.0, 14.0, 24.0, 24.0), (ohio.LeastHeightInches, ohio.LeastWidthInches, ohio.LeastAboveGroundInches, ohio.StandHours!.Value, ohio.NeighborHours!.Value));
    }

    [Fact]
    public void A_printed_flag_is_never_smaller_than_any_rule_asks()
    {
        foreach (var pack in Tables.Shipped.RulePacks)
        {
            var flag = LawnFlag.Of(Lawn, Entry, pack);
            Assert.True(flag.WidthInches >= (pack.LawnFlag?.LeastWidthInches ?? 5.0) && flag.HeightInches >= (pack.LawnFlag?.LeastHeightInches ?? 4.0));
            Assert.True(flag.LetterInches >= (pack.LawnFlag?.LeastLetterInches ?? 0.375));
            Assert.NotEmpty(flag.Source);
        }
    }

    [Fact]
    public void Without_a_rule_the_height_said_meets_every_rule_read()
    {
        var general = LawnFlag.Of(Lawn, Entry, Tables.Shipped.Pack("general")!);
        Assert.Contains(general.Steps, step => step.Contains("14 to 18 in", StringComparison.Ordinal));
        foreach (var rule in Tables.Shipped.RulePacks.Select(p => p.LawnFlag).OfType<LawnFlagRule>())
        {
            Assert.True(rule.LeastAboveGroundInches <= 14.0 && (rule.MostAboveGroundInches ?? 18.0) >= 18.0);
        }
    }

    [Fact]
    public void Where_the_law_prescribes_words_they_stand_on_the_flag_and_where_it_prescribes_the_sign_that_is_said()
    {
        Assert.Equal(["LAWN CARE", "APPLICATION", "KEEP OFF", "THE GRASS"], LawnFlag.Of(Lawn, Entry, Tables.Shipped.Pack("us-in")!).Big);
        Assert.True(LawnFlag.Of(Lawn, Entry, Tables.Shipped.Pack("us-oh")!).UseOwnForm);
        Assert.Contains("24 HOURS", LawnFlag.Of(Lawn, Entry, Tables.Shipped.Pack("us-ny")!).Big);
    }

    [Fact]
    public void The_notice_says_what_when_reentry_and_leaves_the_contact_blank()
    {
        var notice = CustomerNotice.Of(Lawn, Entry, Tables.Shipped.Pack("us-oh")!, UnitSystem.UsCustomary);
        Assert.Contains("Sep 8, 2026", notice.Heading, StringComparison.Ordinal);
        Assert.Equal("until sprays have dried", Text("Keep off until"));
        Assert.Null(Text("Firm and telephone"));
        Assert.Equal(5, notice.Asked.Count);
        Assert.Contains(notice.Advice, line => line.Contains("24 hours", StringComparison.Ordinal));
        string? Text(string label) => notice.Lines.Single(l => l.Label == label).Text;
    }
}
