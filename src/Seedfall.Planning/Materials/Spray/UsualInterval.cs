namespace Seedfall.Planning.Materials;

/// <summary>The wait taken where a past spray's label interval was not entered: the longest its labels are known to ask.</summary>
internal static class UsualInterval
{
    /// <summary>Days taken for an active ingredient nothing is known about.</summary>
    internal const int Unknown = 120;

    /// <summary>Days to wait and where the figure comes from.</summary>
    internal static (int Days, string Source) For(string active) => active switch
    {
        _ when Actives.Is(active, Actives.Prodiamine) => (213, "4 to 7 months by rate: Delaware Cooperative Extension 2008"),
        _ when Actives.Is(active, Actives.Dithiopyr) => (122, "3 months, 4 after split use: Delaware Cooperative Extension 2008"),
        _ when Actives.Is(active, Actives.Pendimethalin) => (90, Worked.Practice),
        _ when Actives.Is(active, Actives.Halosulfuron) => (28, Worked.Practice),
        _ when Actives.Is(active, Actives.Triclopyr) => (28, Worked.Practice),
        _ when Actives.IsBroadleafMixture(active) => (28, Worked.Practice),
        _ when Actives.Is(active, Actives.Quinclorac) => (7, "Delaware Cooperative Extension 2008: 7 days before Kentucky bluegrass"),
        _ when Actives.Is(active, Actives.Glyphosate) => (7, Worked.Practice),
        _ when Actives.Is(active, Actives.Mesotrione) || Actives.Is(active, Actives.Siduron) => (0, "used at seeding: Delaware Cooperative Extension 2008"),
        _ => (Unknown, "nothing is known of this active ingredient"),
    };
}
