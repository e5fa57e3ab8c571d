using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>A nozzle's flow as its maker prints it.</summary>
/// <param name="Flow">Flow, above 0.</param>
/// <param name="At">Pressure it is printed for, above 0.</param>
public sealed record NozzleRating(FlowRate Flow, Pressure At);

/// <summary>One nozzle against the others and its rating.</summary>
/// <param name="Number">From 1, in the order caught.</param>
/// <param name="Flow">Its flow.</param>
/// <param name="OffOthers">Share it lies above (below 0: under) the mean of the others; null where it was caught alone.</param>
/// <param name="OffRating">The same against its rating at the test's pressure; null where not known.</param>
/// <param name="Replace">True where either is 10 % or more.</param>
/// <param name="Statement">What to do, in one sentence.</param>
public sealed record NozzleFinding(int Number, Figure Flow, Figure? OffOthers, Figure? OffRating, bool Replace, string Statement);

/// <summary>The wear check of nozzles.</summary>
public static class NozzleWear
{
    /// <summary>A nozzle this far off the others, or off its rating, is replaced (Michigan State University Extension, 10 %).</summary>
    public const double Limit = 0.10;

    private const string Source = "10 %: Michigan State University Extension";
    private const double Slack = 1.0e-9;

    /// <summary>
    /// Each nozzle against the mean of the others. The one farthest off is set aside before the rest are judged, so that one worn
    /// nozzle does not condemn the sound ones.
    /// </summary>
    /// <param name="flows">Flow of each nozzle, above 0.</param>
    /// <param name="rating">Null where not known.</param>
    /// <param name="pressure">Pressure of the test; null where there was no gauge: the rating is then taken as it is printed.</param>
    public static IReadOnlyList<NozzleFinding> Check(IReadOnlyList<FlowRate> flows, NozzleRating? rating = null, Pressure? pressure = null)
    {
        ArgumentNullException.ThrowIfNull(flows);
        if (flows.Any(f => !(f > FlowRate.Zero)))
        {
            throw new ArgumentOutOfRangeException(nameof(flows), flows.Count, "flows above 0 are needed");
        }

        if (flows.Count < 2 && rating is null)
        {
            return [];
        }

        var off = OffOthers([.. flows.Select(f => f.LitersPerMinute)]);
        var rated = rating is null ? (FlowRate?)null : NozzlePressure.FlowAt(rating.Flow, rating.At, pressure ?? rating.At);
        return [.. flows.Select((flow, i) => Finding(i + 1, flow, off[i], rated, rating, pressure))];
    }

    /// <summary>True where a share is 10 % or more.</summary>
    internal static bool IsOff(double? share) => share is { } s && Math.Abs(s) >= Limit - Slack;

    private static double?[] OffOthers(double[] flows)
    {
        var off = new double?[flows.Length];
        var left = Enumerable.Range(0, flows.Length).ToList();
        while (left.Count > 1)
        {
            var sum = left.Sum(i => flows[i]);
            var shares = left.ToDictionary(i => i, i => flows[i] / ((sum - flows[i]) / (left.Count - 1)) - 1.0);
            var worst = left.MaxBy(i => Math.Abs(shares[i]));
            foreach (var i in left)
            {
                off[i] = shares[i];
            }

            if (!IsOff(shares[worst]))
            {
                break;
            }

            left.Remove(worst);
            if (left.Count == 1)
            {
                off[left[0]] = null;
            }
        }

        return off;
    }

    private static NozzleFinding Finding(int number, FlowRate flow, double? offOthers, FlowRate? rated, NozzleRating? rating, Pressure? pressure)
    {
        var offRating = rated is { } r ? flow / r - 1.0 : (double?)null;
        var replace = IsOff(offOthers) || IsOff(offRating);
        return new(
            number,
            Worked.Computed($"sprayer.nozzle-{number}.flow", $"Nozzle {number}", QuantityKind.FlowRate, flow.LitersPerMinute, "q = volume / time"),
            offOthers is { } o ? Worked.Sourced($"sprayer.nozzle-{number}.others", "Off the others", QuantityKind.Share, o, "flow / mean of the others - 1", Source, Sureness.Measured) : null,
            offRating is { } p
                ? Worked.Sourced(
                    $"sprayer.nozzle-{number}.rating", "Off its rating", QuantityKind.Share, p, "flow / (rated flow x sqrt(P / rated P)) - 1", Source, Sureness.Measured, pressure is null ? "No pressure was read: the rating is taken as printed." : null,
                    new WorkingInput("Q", "rated flow", rating!.Flow.GallonsPerMinute, "gpm"), new WorkingInput("Pr", "rated at", rating.At.PoundsPerSquareInch, "psi"), new WorkingInput("P", "pressure of the test", (pressure ?? rating.At).PoundsPerSquareInch, "psi"))
                : null,
            replace,
            Words(replace, IsOff(offRating) ? offRating!.Value : offOthers ?? offRating));
    }

    private static string Words(bool replace, double? off) => (replace, off) switch
    {
        (_, null) => "Nothing is left to hold it against: it may be the faulty one. Enter the maker's rating.",
        (false, _) => "Sound.",
        (true, > 0.0) => "Replace it: it puts out 10 % or more too much, as worn nozzles do.",
        _ => "Clean it with a soft brush and catch again; replace it where it stays 10 % or more too low.",
    };
}
