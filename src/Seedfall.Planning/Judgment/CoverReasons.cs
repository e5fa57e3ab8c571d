using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Judgment;

/// <summary>Reasons from how much lives and how much is weed.</summary>
internal static class CoverReasons
{
    internal static IEnumerable<Reason> StartOver(Patch patch, PatchSummary summary)
    {
        if (summary.LivingCover.Value < Thresholds.LivingShare)
        {
            yield return new Reason(
                Id(patch, "cover"),
                Text($"{patch.Name}: {summary.LivingCover.Value:P0} of the ground lives, less than half: too little to thicken, so the dead is cleared and the patch sown as new."),
                Cover(patch, summary));
        }

        if (patch.WeedCover?.Value > Thresholds.WeedShare)
        {
            yield return new Reason(
                Id(patch, "weeds"),
                Text($"{patch.Name}: {patch.WeedCover.Value.Value:P0} of the ground is weeds, more than half: renovate."),
                Weeds(patch));
        }
    }

    internal static Reason Enough(Patch patch, PatchSummary summary) => new(
        Id(patch, "cover"),
        Text($"{patch.Name}: {summary.LivingCover.Value:P0} of the ground lives: feed and water it into thickening, and let seed fill the rest."),
        Cover(patch, summary));

    internal static IEnumerable<Reason> Notes(Patch patch, PatchSummary summary)
    {
        if (summary.LivingCover.Value is >= Thresholds.LivingShare and < Thresholds.NearLivingShare)
        {
            yield return new Reason(Id(patch, "near"), $"{patch.Name}: with this much gone some would already renovate; look again in spring.");
        }

        if (patch.WeedCover?.Value is > 0.0 and <= Thresholds.WeedShare)
        {
            yield return new Reason(
                Id(patch, "weeds"),
                Text($"{patch.Name}: {patch.WeedCover.Value.Value:P0} of the ground is weeds: deal with them before seeding by the label's wait, or after the second mowing."),
                Weeds(patch));
        }
    }

    internal static Reason Dormant(Patch patch) => new(
        Id(patch, "dormant"),
        Text($"{patch.Name}: the crowns are firm, so the turf is dormant, not dead. Water a test square for {Thresholds.DormantDays} days and count again before seeding."),
        new Figure(Id(patch, "dormant-days"), $"{patch.Name}: days to water before counting", QuantityKind.Days, Thresholds.DormantDays, new Working(
            "d as advised", [], Thresholds.DormantSource, Sureness.Published)));

    private static Figure Cover(Patch patch, PatchSummary summary) => new(Id(patch, "living"), $"{patch.Name}: living cover", QuantityKind.Share, summary.LivingCover.Value, new Working(
        "c against the line L",
        [new("c", "living cover", summary.LivingCover.Value, ""), new("L", "line below which to start over", Thresholds.LivingShare, "")],
        Thresholds.LivingSource,
        summary.LivingCover.Working.Sureness,
        summary.LivingCover.Working.Note));

    private static Figure Weeds(Patch patch) => new(Id(patch, "weed-cover"), $"{patch.Name}: weeds", QuantityKind.Share, patch.WeedCover!.Value.Value, new Working(
        "w against the line L",
        [new("w", "share of the ground under weeds", patch.WeedCover.Value.Value, ""), new("L", "line above which to start over", Thresholds.WeedShare, "")],
        Thresholds.WeedSource,
        Sureness.Measured));

    private static string Id(Patch patch, string what) => $"verdict.{patch.Id}.{what}";

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
