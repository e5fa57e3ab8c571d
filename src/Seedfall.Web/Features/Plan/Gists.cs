using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water;

namespace Seedfall.Web.Features.Plan;

/// <summary>The answer of each part of a plan in a few words.</summary>
internal static class Gists
{
    public static string Day(RecoveryPlan plan) => plan.Timing.SeedDown is not { } day
        ? "no day to seed this autumn"
        : plan.Timing.Stand.FirstOrDefault(c => c.Date == day) is { } chance
            ? $"{Short(day)}, {FigureText.Show(QuantityKind.Chance, chance.Chance, UnitSystem.UsCustomary)} chance of a stand"
            : Short(day);

    public static string Outlook(RecoveryPlan plan)
    {
        var cover = plan.Timing.CoverForecast;
        return cover.Count == 0 ? "see what the field taught" : $"{FigureText.Show(QuantityKind.Chance, cover[Math.Min(42, cover.Count - 1)].P50, UnitSystem.UsCustomary)} cover {(cover.Count > 42 ? "six weeks on" : "by the season's end")}";
    }

    public static string Water(RecoveryPlan plan) => plan.Water.Result switch
    {
        ProofResult.Holds => "it can be put on",
        ProofResult.Refused => "it cannot be put on",
        ProofResult.NotProven => "not proven either way",
        _ => "it holds if the assumptions do",
    };

    public static string Shopping(RecoveryPlan plan) => plan.Materials.Count == 0
        ? "nothing"
        : Count(plan.Materials.Count, "line", "lines") + (plan.TotalCost is { } cost ? $", {FigureText.Show(cost, UnitSystem.UsCustomary, plan.Currency)}" : "");

    public static string Work(RecoveryPlan plan) => plan.Tasks.Count == 0
        ? "none"
        : $"{Count(plan.Tasks.Count, "piece", "pieces")}, {Short(plan.Tasks.Min(t => t.Date))} to {Short(plan.Tasks.Max(t => t.LastDate))}";

    public static string Count(int n, string one, string many) => n switch
    {
        0 => "none",
        1 => $"1 {one}",
        _ => string.Create(CultureInfo.InvariantCulture, $"{n} {many}"),
    };

    private static string Short(DateOnly day) => day.ToString("MMM d", CultureInfo.InvariantCulture);
}
