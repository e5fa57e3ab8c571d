using Seedfall.Engine.Timing;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Timing;

/// <summary>How the chance curve was computed and how far to trust it.</summary>
internal static class StandWorking
{
    internal static Working Of(TimingFacts facts) => facts.Simulated?.Working ?? ByRule(facts);

    private static Working ByRule(TimingFacts facts)
    {
        var slowest = facts.Slowest;
        return new Working(
            "chance = (k + 1/2) / (n + 1); k sums over the seasons, from that seed-down day: 0 unless every grass gathers thetaE above Tb and then L above 0 degC before the next night at or below 28 degF, and M more before soil falls to 45 degF; else Phi((Thot - Tsoil) / 1.5 degC), Tsoil the first two weeks' mean",
            [
                new("n", "past seasons", facts.Members.Count, ""),
                new("Tb", $"base temperature of {slowest.Name}, the slowest grass", slowest.BaseC, "degC"),
                new("thetaE", $"degree-days from seed-down to half emergence in the field, {slowest.Name}", slowest.EmergenceDegreeDays, "degC d"),
                new("L", $"degree-days from emergence to {StandNeed.Leaves:0} leaves and the first mowing, {slowest.Name}", slowest.LeavesDegreeDays, "degC d"),
                new("M", "degree-days from the first mowing to the second", StandNeed.SecondMowingDegreeDays, "degC d"),
                new("Thot", "soil in which half the seedings fail of heat, strictest grass", facts.Needs.Min(need => need.HotC), "degC"),
            ],
            $"{FieldEmergence.Source}; leaf interval from the species table; M and the heat limit assumed; 28 degF as the danger to seedlings and 45 degF as the end of growth common practice",
            Sureness.Assumed,
            Note(facts.Members.Count));
    }

    private static string Note(int seasons) =>
        "Rules of thumb: assumes seed kept wet, and leaves out disease, washouts, birds and seed depth. The hour-by-hour simulation needs at least five past seasons and a seed mix. "
        + (seasons == 0
            ? "No past season is known, so there is no curve."
            : $"With {seasons} past season{(seasons == 1 ? "" : "s")} a chance near one half is good to about {100.0 * DateChances.FromDays([], seasons).StandardError(0.5):0} points either way.");
}
