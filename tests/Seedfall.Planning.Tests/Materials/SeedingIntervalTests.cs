using Seedfall.Planning.Materials;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Tests.Ground;

namespace Seedfall.Planning.Tests.Materials;

public sealed class SeedingIntervalTests
{
    private static readonly DateOnly June = new(2025, 6, 1);

    [Fact]
    public void The_latest_label_day_holds_seed_down()
    {
        var wait = SeedingInterval.EarliestSeeding(
            Some.Lawn() with
            {
                Sprayed =
                [
                    new PastSpray { ActiveIngredient = "quinclorac", Date = June.AddDays(60), LabelSeedingIntervalDays = 28 },
                    new PastSpray { ActiveIngredient = "dithiopyr", Date = June, LabelSeedingIntervalDays = 92 },
                    new PastSpray { ActiveIngredient = "siduron", Date = June.AddDays(80), LabelSeedingIntervalDays = 0 },
                ],
            },
            SeedingMethod.Broadcast);
        Assert.Equal(June.AddDays(92), wait.Earliest);
        Assert.Equal(["label.seeding-interval.2", "label.seeding-interval.1"], wait.Walls.Select(w => w.Id));
        Assert.Empty(wait.Assumptions);
        Assert.Equal(2, wait.StandingOn(June).Count);
        Assert.Equal("label.seeding-interval.2", Assert.Single(wait.StandingOn(June.AddDays(90))).Id);
        Assert.Empty(wait.StandingOn(June.AddDays(92)));
    }

    [Fact]
    public void Without_a_label_interval_the_longest_usual_wait_is_taken_and_named()
    {
        var wait = Of("prodiamine", SeedingMethod.Broadcast);
        Assert.Equal(June.AddDays(213), wait.Earliest);
        Assert.Equal("assumed.sprayed.1", Assert.Single(wait.Assumptions).Id);
        Assert.Equal(June.AddDays(120), Of("something new", SeedingMethod.Broadcast).Earliest);
    }

    [Fact]
    public void Research_stands_beside_the_label_and_says_when_it_is_later()
    {
        var spray = new PastSpray { ActiveIngredient = "dithiopyr", Date = June, LabelSeedingIntervalDays = 60 };
        var slit = SeedingInterval.EarliestSeeding(Some.Lawn() with { Sprayed = [spray] }, SeedingMethod.SlitSeed);
        Assert.Equal(June.AddDays(60), slit.Earliest);
        Assert.Contains("later than the label", Assert.Single(slit.Advice).Statement, StringComparison.Ordinal);
        var broadcast = SeedingInterval.EarliestSeeding(Some.Lawn() with { Sprayed = [spray] }, SeedingMethod.Broadcast);
        Assert.DoesNotContain("later than the label", Assert.Single(broadcast.Advice).Statement, StringComparison.Ordinal);
    }

    [Fact]
    public void Nothing_sprayed_holds_nothing()
    {
        var wait = SeedingInterval.EarliestSeeding(Some.Lawn(), SeedingMethod.Broadcast);
        Assert.Null(wait.Earliest);
        Assert.Empty(wait.Walls);
    }

    private static SeedingWait Of(string active, SeedingMethod method) =>
        SeedingInterval.EarliestSeeding(Some.Lawn() with { Sprayed = [new PastSpray { ActiveIngredient = active, Date = June }] }, method);
}
