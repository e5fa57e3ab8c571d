namespace Seedfall.Planning.Water.Supply;

/// <summary>Which timer opens a set.</summary>
internal static class SetTimers
{
    /// <summary>
    /// Name of the set's timer; null where a hand opens it. A timer of which nothing is known but that there is one opens each set by itself;
    /// a single timer that no set names opens all; sets of one timer on different taps are taken as on a timer at each.
    /// </summary>
    internal static string? Of(WaterScene scene, SetFacts set)
    {
        if (set.Hand || !scene.Lines.Timed)
        {
            return null;
        }

        var timers = scene.Lines.Timers;
        if (timers.Count == 0)
        {
            return set.Key;
        }

        var named = set.Timer ?? (timers.Count == 1 && scene.Sets.All(s => s.Timer is null) ? timers[0].Name : null);
        return named is null || scene.Sets.Where(s => (s.Timer ?? named) == named && !s.Hand).Select(s => s.Tap).Distinct().Count() < 2 ? named : $"{named} ({set.Tap ?? scene.Lines.Taps[0].Name})";
    }

    /// <summary>True where some set needs a hand to open it.</summary>
    internal static bool AnyByHand(WaterScene scene) => scene.Sets.Any(set => Of(scene, set) is null);
}
