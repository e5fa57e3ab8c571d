using Seedfall.Planning.Field;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Tests.Ground;
using Seedfall.Planning.Water;

namespace Seedfall.Planning.Tests.Field;

/// <summary>The sets a watering may name are those the daily watering knows, patch by patch.</summary>
public sealed class WateredSetsTests
{
    [Fact]
    public void Each_patch_finds_the_names_its_daily_watering_goes_by()
    {
        var lawn = Some.Lawn(Some.Patch("front", 200), Some.Patch("side", 100), Some.Patch("back", 150)) with
        {
            Water = new WaterSupply { Sets = [new() { Name = "rotors", PatchIds = ["front", "side"] }, new() { Name = "sprays", PatchIds = ["side"] }] },
        };
        var patches = PatchGround.Summarize(lawn).Value!;
        var sets = WateredSets.Of(lawn);
        Assert.Equal(3, sets.Count);
        Assert.All(lawn.Patches, patch => Assert.Equal(DailySet.Of(lawn, patches, patch.Id).Select(s => s.Name), sets.Where(s => s.PatchIds.Contains(patch.Id)).Select(s => s.Name)));
        Assert.Empty(LogRules.Problems(lawn, Ran(sets[2].Name, "back")));
        Assert.Empty(LogRules.Problems(lawn, Ran("rotors", null)));
        Assert.Contains("does not wet", Assert.Single(LogRules.Problems(lawn, Ran("sprays", "front"))), StringComparison.Ordinal);
        Assert.Contains("none of this lawn's", Assert.Single(LogRules.Problems(lawn, Ran("hydrant", "front"))), StringComparison.Ordinal);
    }

    private static LogEntry.Watered Ran(string set, string? patch) => new() { Id = Guid.NewGuid(), At = new DateTimeOffset(2026, 9, 5, 6, 0, 0, TimeSpan.FromHours(-5)), Set = set, PatchId = patch, Minutes = 12.0 };
}
