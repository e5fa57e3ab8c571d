using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Field;

/// <summary>The numbers behind a judgment of cover.</summary>
internal static class CoverFigures
{
    private const string Own = "Seedfall's own comparison of photographs with its forecast";

    internal static IReadOnlyList<Figure> Of(CoverScene scene)
    {
        List<Figure> figures =
        [
            Worked.Sourced(
                "cover.measured", "green cover measured", QuantityKind.Share, scene.Last.Cover.Value, "mean of the day's pictures", "measured on photographs", Sureness.Measured,
                FormattableString.Invariant($"Nine times of ten between {scene.Last.Low.Percent:0} and {scene.Last.High.Percent:0} %: the error of measuring, and how cover differs from place to place."),
                new WorkingInput("n", "pictures", scene.Last.Count, "")),
            Worked.Sourced(
                "cover.forecast", "forecast for that day", QuantityKind.Share, scene.Due.P50, "middle of the simulated seasons", scene.Timing.CoverWorking?.Source ?? Own, Sureness.Computed,
                FormattableString.Invariant($"Eight of ten past seasons lie between {scene.Due.P10 * 100.0:0} and {scene.Due.P90 * 100.0:0} %. It is for the lawn as a whole.")),
            Worked.Computed(
                "cover.gained", "of the gain forecast", QuantityKind.Share, scene.Gained, "g = (measured - start) / (forecast - forecast at seed-down)", scene.StartMeasured ? null : "The start is the living cover entered: no picture is from before seed-down.",
                new WorkingInput("measured", "cover measured", scene.Last.Cover.Value, ""), new WorkingInput("start", "cover at seed-down", scene.Start, ""),
                new WorkingInput("forecast", "gain forecast", scene.ForecastRise, "")),
        ];
        if (scene.DaysLeft is >= 0 and { } left)
        {
            figures.Add(Worked.Computed("cover.days-left", "left to reseed", QuantityKind.Days, left, "last good day - today", "The last good day of the plan's window."));
        }

        if (scene is { DaysLeft: >= 0, ChanceToday: { } chance })
        {
            figures.Add(new("cover.chance-today", "chance of a stand from seed put down today", QuantityKind.Chance, chance, scene.Timing.StandWorking));
        }

        return figures;
    }
}
