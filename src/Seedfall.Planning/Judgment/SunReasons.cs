using System.Globalization;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Judgment;

/// <summary>What the reckoning of the sun has to say beside what was entered.</summary>
internal static class SunReasons
{
    /// <summary>The reckoned figure where nothing was entered, or how far it is from what was entered.</summary>
    internal static Reason? Note(Patch patch)
    {
        if (patch.SunWorked is not { } figure || patch.SunHours is not { } hours)
        {
            return null;
        }

        var apart = figure.Value - hours;
        return Math.Abs(apart) < PatchSun.WorthSaying && apart != 0.0 ? null : new Reason(
            $"verdict.{patch.Id}.sun",
            apart == 0.0
                ? string.Create(CultureInfo.InvariantCulture, $"{patch.Name}: {hours:0.#} hours of direct sun, reckoned from what stands around it.")
                : string.Create(CultureInfo.InvariantCulture, $"{patch.Name}: {hours:0.#} hours of sun were entered and are used; what stands around it leaves {figure.Value:0.#}. Count once more on a clear day."),
            figure);
    }
}
