using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Timing;

/// <summary>How the chance curve was computed and how far to trust it.</summary>
internal static class StandWorking
{
    internal static Working Of(TimingFacts facts)
    {
        var slowest = facts.Slowest;
        return new Working(
            "chance = (k + 1/2) / (n + 1); k counts the seasons in which, from that seed-down day, every grass first gathers thetaE above Tb and then G above 0 degC before the next night at or below 28 degF, with the first 5 days' soil at or below Tmax",
            [
                new("n", "past seasons", facts.Members.Count, ""),
                new("Tb", $"base temperature of {slowest.Name}, the slowest grass", slowest.BaseC, "degC"),
                new("thetaE", $"degree-days from seed-down to half emergence in the field, {slowest.Name}", slowest.EmergenceDegreeDays, "degC d"),
                new("G", $"degree-days from emergence to {StandNeed.Leaves:0} leaves and {StandNeed.Mowings:0} mowings, {slowest.Name}", slowest.GrowthDegreeDays, "degC d"),
                new("Tmax", "warmest soil to seed into, strictest grass", facts.Needs.Min(need => need.WarmestC), "degC"),
            ],
            $"{FieldEmergence.Source}; leaf interval from the species table; {StandNeed.DegreeDaysPerMowing:0} degC d per mowing assumed; 28 degF as the end of seedling growth common practice",
            Sureness.Assumed,
            Note(facts.Members.Count));
    }

    private static string Note(int seasons) =>
        "Rules of thumb: assumes seed kept wet, and leaves out disease, washouts, birds and seed depth. The hour-by-hour seedbed model, once it runs in the plan, takes this curve's place. "
        + (seasons == 0
            ? "No past season is known, so there is no curve."
            : $"With {seasons} past season{(seasons == 1 ? "" : "s")} a chance near one half is good to about {100.0 * 0.5 / Math.Sqrt(seasons):0} points either way.");
}
