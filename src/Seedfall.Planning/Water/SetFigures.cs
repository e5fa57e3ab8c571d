using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water;

/// <summary>The figures of one set: rate on this tap, uniformity, run-time multiplier, draw, intake.</summary>
internal static class SetFigures
{
    internal static IReadOnlyList<Figure> For(
        SprinklerSet set, string key, SetRate rate, double areaM2, double wantedLpm, double share, double multiplier, PrecipitationRate intake, double slopePercent, FlowRate most)
    {
        var id = $"water.{key}";
        var weak = share < 1.0;
        return
        [
            new Figure($"{id}.rate", $"{set.Name}: precipitation rate", QuantityKind.PrecipitationRate, rate.NominalMmh * share, weak ? Weak(rate, wantedLpm, most) : rate.RateWorking),
            new Figure($"{id}.uniformity", $"{set.Name}: distribution uniformity, low quarter", QuantityKind.Share, rate.LowQuarter.Value, rate.UniformityWorking),
            new Figure($"{id}.multiplier", $"{set.Name}: run-time multiplier", QuantityKind.Number, multiplier, new Working(
                "RTM = 1 / (0.4 + 0.6 DU)",
                [new("DU", "distribution uniformity, low quarter", rate.LowQuarter.Value, "")],
                "irrigation auditing practice, no source read; Mecham 2010 (ASABE 35895) on the move away from 1/DU",
                Sureness.CommonPractice)),
            new Figure($"{id}.draw", $"{set.Name}: draws from the tap", QuantityKind.FlowRate, wantedLpm * share, new Working(
                set.Flow is null ? "Q = PR A / 96.25, at most the tap" : "Q as entered, at most the tap",
                [
                    new("PR", "precipitation rate", new PrecipitationRate(rate.NominalMmh).InchesPerHour, "in/h"),
                    new("A", "ground of one position", new Area(areaM2 / set.Positions).SquareFeet, "sq ft"),
                    new("T", "most the tap and hose bring it", most.GallonsPerMinute, "gpm"),
                ],
                "definition of precipitation rate",
                Sureness.Computed)),
            new Figure($"{id}.intake", $"{set.Name}: rate the bare ground takes", QuantityKind.PrecipitationRate, intake.MillimetersPerHour, new Working(
                "from the table by soil and slope, bare column",
                [new("s", "steepest slope under the set", slopePercent, "%")],
                SoilIntake.Source,
                Sureness.CommonPractice)),
        ];
    }

    private static Working Weak(SetRate rate, double wantedLpm, FlowRate most) => new(
        "PR = PR0 * T / Q0",
        [
            new("PR0", "rate with a strong enough tap", new PrecipitationRate(rate.NominalMmh).InchesPerHour, "in/h"),
            new("T", "most the tap and hose bring it", most.GallonsPerMinute, "gpm"),
            new("Q0", "flow the set asks for", new FlowRate(wantedLpm).GallonsPerMinute, "gpm"),
        ],
        "the tap cannot give more than it gives; the rate is scaled down",
        Sureness.Computed,
        "The set asks for more than the tap gives. Heads short of pressure throw less far and less evenly: split the set.");
}
