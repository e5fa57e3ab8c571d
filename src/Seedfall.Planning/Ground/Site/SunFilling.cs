namespace Seedfall.Planning.Ground;

/// <summary>Puts hours of sun reckoned from obstacles where none were entered. An entered value wins.</summary>
internal static class SunFilling
{
    /// <summary>The lawn with hours of sun wherever they can be known, each with its working.</summary>
    internal static Lawn Fill(Lawn lawn, int year) => lawn.Patches.Any(PatchSun.IsKnown)
        ? lawn with { Patches = [.. lawn.Patches.Select(p => Fill(lawn, p, year))] }
        : lawn;

    private static Patch Fill(Lawn lawn, Patch patch, int year) => PatchSun.Hours(lawn.Place, patch, year) is { } figure
        ? patch with { SunHours = patch.SunHours ?? figure.Value, SunWorked = figure }
        : patch;
}
