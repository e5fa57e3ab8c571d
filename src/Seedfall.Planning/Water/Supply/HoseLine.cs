using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Supply;

/// <summary>What is left at a sprinkler at the end of a hose.</summary>
/// <param name="AtHead">Pressure at the head.</param>
/// <param name="Flow">Flow through it.</param>
/// <param name="Figures">Flow, pressure (in words of psi), loss and share of the rated flow.</param>
public sealed record HoseLine(Pressure AtHead, FlowRate Flow, IReadOnlyList<Figure> Figures)
{
    private const int Halvings = 80;

    /// <summary>
    /// The flow at which tap, hose and head agree: P(tap, Q) - loss(hose, Q) = Pr (Q / Qr)^2. Found by halving; the left side falls and
    /// the right side rises with Q, so there is one.
    /// </summary>
    /// <param name="tap">The tap's pressures.</param>
    /// <param name="hose">Length of hose; not negative.</param>
    /// <param name="bore">Its bore.</param>
    /// <param name="head">The sprinkler's rating.</param>
    public static HoseLine Of(TapPressure tap, Length hose, Length bore, NozzleRating head)
    {
        ArgumentNullException.ThrowIfNull(tap);
        ArgumentNullException.ThrowIfNull(head);
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tap.Static.Kilopascals, nameof(tap));
        ArgumentOutOfRangeException.ThrowIfNegative(tap.Running.Kilopascals, nameof(tap));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(tap.RunningFlow.LitersPerMinute, nameof(tap));
        ArgumentOutOfRangeException.ThrowIfGreaterThanOrEqual(tap.Running.Kilopascals, tap.Static.Kilopascals, nameof(tap));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(head.Flow.LitersPerMinute, nameof(head));
        ArgumentOutOfRangeException.ThrowIfNegativeOrZero(head.At.Kilopascals, nameof(head));
        var (lowLpm, highLpm) = (0.0, head.FlowAt(tap.Static).LitersPerMinute);
        for (var k = 0; k < Halvings; k++)
        {
            var flow = new FlowRate((lowLpm + highLpm) / 2.0);
            var needed = head.At * Math.Pow(flow / head.Flow, 2.0);
            (lowLpm, highLpm) = tap.At(flow) - HazenWilliams.Loss(flow, hose, bore) > needed ? (flow.LitersPerMinute, highLpm) : (lowLpm, flow.LitersPerMinute);
        }

        var found = new FlowRate(lowLpm);
        var atHead = head.At * Math.Pow(found / head.Flow, 2.0);
        return new HoseLine(atHead, found, FiguresOf(tap, hose, bore, head, found, atHead));
    }

    private static IReadOnlyList<Figure> FiguresOf(TapPressure tap, Length hose, Length bore, NozzleRating head, FlowRate flow, Pressure atHead)
    {
        WorkingInput[] inputs =
        [
            new("P0", "pressure at the tap, shut", tap.Static.PoundsPerSquareInch, "psi"),
            new("P1", "pressure at the tap, running", tap.Running.PoundsPerSquareInch, "psi"),
            new("Q1", "flow then", tap.RunningFlow.GallonsPerMinute, "gpm"),
            new("L", "hose", hose.Feet, "ft"),
            new("d", "bore", bore.Inches, "in"),
            new("Qr", "rated flow", head.Flow.GallonsPerMinute, "gpm"),
            new("Pr", "rated pressure", head.At.PoundsPerSquareInch, "psi"),
            new("Ph", "pressure left at the head", atHead.PoundsPerSquareInch, "psi"),
            new("Pl", "pressure lost in the hose", HazenWilliams.Loss(flow, hose, bore).PoundsPerSquareInch, "psi"),
        ];
        const string Source = "Hazen and Williams for hose and service pipe, C 140; Q proportional to sqrt(P) at the nozzle";
        const string Note = "Printed hose charts lose 7 to 13 % more; a bucket under the sprinkler's own hose is better.";
        return
        [
            new("water.hose.flow", "Flow at the head", QuantityKind.FlowRate, flow.LitersPerMinute, new Working("P0 - (P0 - P1)(Q/Q1)^1.852 - 4.52 L (Q/C)^1.852 / d^4.8704 = Pr (Q/Qr)^2", inputs, Source, Sureness.Computed, Note)),
            new("water.hose.share", "Pressure left at the head, of what it is rated for", QuantityKind.Share, atHead / head.At, new Working("Ph / Pr", inputs, Source, Sureness.Computed, Note)),
        ];
    }
}
