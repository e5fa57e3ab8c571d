using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Ground;

/// <summary>What is taken where nothing was entered for a patch. Each becomes a named assumption on the plan.</summary>
public static class GroundDefaults
{
    /// <summary>Living cover taken where none was judged, share.</summary>
    public const double LivingCover = 0.5;

    /// <summary>Hours of direct sun taken where none were counted.</summary>
    public const double SunHours = 6.0;

    /// <summary>Slope taken where none was measured, percent.</summary>
    public const double SlopePercent = 0.0;

    internal static IEnumerable<Assumption> Of(Patch patch)
    {
        if (patch.LivingCover is null)
        {
            yield return new($"assumed.{patch.Id}.cover", $"{patch.Name}: half of the ground is taken to carry living turf.", "Seed rate, thin-spot extra, cover material and the verdict rest on it.", "Throw a hoop ten times and judge, or photograph straight down and measure.");
        }

        if (patch.SunHours is null)
        {
            yield return new($"assumed.{patch.Id}.sun", $"{patch.Name}: 6 hours of direct sun are taken.", "The choice of grasses and drying of the seedbed rest on it.", "Look every two hours on a clear day and count the hours in sun.");
        }

        if (patch.SlopePercent is null)
        {
            yield return new($"assumed.{patch.Id}.slope", $"{patch.Name}: the ground is taken as level.", "A slope has more ground than its plan, sheds water and needs cover.", "Hold a level on a 10 ft board: inches of fall divided by 1.2 is the slope in percent.");
        }
    }

    /// <summary>One assumption for all patches of which it was not said how they were measured.</summary>
    internal static IEnumerable<Assumption> Measured(IReadOnlyList<Patch> patches)
    {
        string[] unsaid = [.. patches.Where(p => p.Measured is null).Select(p => p.Name)];
        if (unsaid.Length > 0)
        {
            yield return new(
                "assumed.measured", $"How the size was taken was not said for {string.Join(", ", unsaid)}: a tape is taken for lengths, a scaled picture for outlines and known areas.",
                "How far off each area, and every amount that rests on it, may be.", "Say whether it was taped, wheeled, paced, drawn or walked.");
        }
    }
}
