using Seedfall.Engine.Simulation;

namespace Seedfall.Engine.Validation.Choice;

/// <summary>Ways to choose the seed-down day, as printed.</summary>
public static class SeedDownRules
{
    /// <summary>The day the other seasons' simulation chooses.</summary>
    public const string Seedfall = "seedfall";

    /// <summary>The day after soil is seen to have fallen to 70 degF for good, by this season's own computed soil temperature.</summary>
    public const string Soil70 = "soil70";

    /// <summary>The usual calendar day of the latitude.</summary>
    public const string Calendar = "calendar";

    /// <summary>The season's own best day, known only afterward.</summary>
    public const string Hindsight = "hindsight";

    /// <summary>All, in the order they are printed.</summary>
    public static IReadOnlyList<string> All { get; } = [Seedfall, Soil70, Calendar, Hindsight];

    /// <summary>The fall to 70 degF is known when the third day below it is over: seed goes down the day after.</summary>
    private const int KnownAfterDays = 3;

    /// <summary>70 degF, taken as reached when the mean is at it.</summary>
    private static readonly double ThresholdC = Math.BitIncrement(190.0 / 9.0);

    /// <summary>
    /// Day on which seed goes down by the soil thermometer: the fall of the 5-day mean to 70 degF and the delay until it is known;
    /// the first day where soil was already that cool. Null where it does not come by the last.
    /// </summary>
    /// <param name="soilC">Daily mean at 5 cm from the season's first day, degC.</param>
    /// <param name="first">First day on which seed may go down.</param>
    /// <param name="last">Last such day.</param>
    public static int? BySoil(ReadOnlySpan<double> soilC, int first, int last)
    {
        var day = SoilCrossing.FirstFallBelow(soilC, ThresholdC, Math.Max(0, first - KnownAfterDays)) + KnownAfterDays;
        return day <= last ? day : null;
    }
}
