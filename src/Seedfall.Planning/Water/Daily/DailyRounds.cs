using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>Depths by the hour as rounds a timer can run.</summary>
internal static class DailyRounds
{
    private const double RoundUpGuard = 1e-9;

    /// <summary>One round per watered hour; minutes rounded up, so that no round brings less than it should.</summary>
    /// <param name="scene">What is known.</param>
    /// <param name="givenMm">Net depth by the hour of the day, mm.</param>
    /// <param name="ahead">Days from today; 0 for today.</param>
    internal static IReadOnlyList<DailyRound> Of(DailyScene scene, double[] givenMm, int ahead)
    {
        var id = string.Create(CultureInfo.InvariantCulture, $"water.daily.{scene.PatchId}{(ahead == 0 ? "" : $".day-{ahead}")}");
        var rounds = new List<DailyRound>();
        for (var hour = 0; hour < givenMm.Length; hour++)
        {
            if (givenMm[hour] > 0.0)
            {
                rounds.Add(Round(scene, hour, givenMm[hour], $"{id}.round-{rounds.Count + 1}"));
            }
        }

        return rounds;
    }

    /// <summary>Whole minutes that put a net depth on the driest quarter.</summary>
    internal static int Minutes(DailySet set, double depthMm) => (int)Math.Ceiling((60.0 * depthMm * set.RunTimeMultiplier / set.RateMmh) - RoundUpGuard);

    private static DailyRound Round(DailyScene scene, int hour, double depthMm, string id) =>
        new(
            scene.Clock.FirstOrDefault(start => start.Hour == hour, new TimeOnly(hour, 0)),
            new Figure($"{id}.depth", "Net depth", QuantityKind.Depth, depthMm, DailyFigures.Least("weather known to the end of yesterday")),
            [.. scene.Sets.Select((set, i) => new DailyRun(set.Name, new Figure($"{id}.set-{i + 1}.minutes", $"{set.Name}: minutes", QuantityKind.Minutes, Minutes(set, depthMm), new Working(
                "t = 60 d RTM / PR, rounded up to whole minutes",
                [
                    new("d", "net depth", new Depth(depthMm).Inches, "in"),
                    new("RTM", "run-time multiplier", set.RunTimeMultiplier, ""),
                    new("PR", "precipitation rate on this tap", new PrecipitationRate(set.RateMmh).InchesPerHour, "in/h"),
                ],
                "definition of precipitation rate; run-time multiplier common practice, no source read",
                Sureness.CommonPractice))))]);
}
