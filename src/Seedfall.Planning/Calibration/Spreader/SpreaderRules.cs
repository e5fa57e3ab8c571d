using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>What an entry about a spreader must keep to.</summary>
public static class SpreaderRules
{
    /// <summary>Beyond this a unit was mistaken: 1,000 lb per 1,000 sq ft is over an inch of grain.</summary>
    private static readonly MassPerArea MostRate = MassPerArea.FromPoundsPerThousandSquareFeet(1000.0);

    /// <summary>What is wrong with an entry, in one sentence; null where nothing is.</summary>
    public static string? Problem(SpreaderScale scale, SpreaderEntry entry)
    {
        ArgumentNullException.ThrowIfNull(scale);
        return entry switch
        {
            SpreaderEntry.Run run when Off(scale, run.Opening) is { } off => off,
            SpreaderEntry.Run run when run.Covered <= Area.Zero => "a run covers some ground",
            SpreaderEntry.Run run when run.Used < Mass.Zero => "no more can be left than was put in",
            SpreaderEntry.Run run when run.Rate > MostRate => FormattableString.Invariant($"that is {run.Rate.PoundsPerThousandSquareFeet:#,##0} lb per 1,000 sq ft: check amount, ground and their units"),
            SpreaderEntry.Run { Swath: { } swath } when swath <= Length.Zero => "a distance between passes above 0 is needed",
            SpreaderEntry.Run { Walk: { } walk } when walk <= Speed.Zero => "a walking speed above 0 is needed",
            SpreaderEntry.FirstFall fall => Off(scale, fall.Opening),
            _ => null,
        };
    }

    private static string? Off(SpreaderScale scale, double opening) => scale.Holds(opening) ? null : $"the opening {scale.Show(opening)} is not on the scale from {scale.Show(scale.Least)} to {scale.Show(scale.Greatest)}";
}
