using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Demo;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Tests.Support;

/// <summary>The plans of the demo's lawns, made once for all tests.</summary>
internal static class DemoPlan
{
    private static readonly Dictionary<string, Lazy<RecoveryPlan>> Plans = DemoTown.Lawns.ToDictionary(
        l => l.Id,
        l => new Lazy<RecoveryPlan>(() => RecoveryPlanner.Plan(l, new Choices { Season = DemoTown.Season, Today = DemoTown.Today }, DemoTown.Weather, Trade.Tables)));

    /// <summary>The ordinary lawn.</summary>
    public static RecoveryPlan Ordinary => Plans["mill-lane-corner"].Value;

    /// <summary>The lawn whose tap cannot water it.</summary>
    public static RecoveryPlan Dry => Plans["quarry-hill"].Value;

    /// <summary>The lawn that must wait.</summary>
    public static RecoveryPlan Waiting => Plans["ferry-landing"].Value;
}
