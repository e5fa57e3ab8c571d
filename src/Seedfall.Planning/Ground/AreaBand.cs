using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground.Shapes;

namespace Seedfall.Planning.Ground;

/// <summary>How far off a patch's area may be: the range it lies in nine times in ten.</summary>
public static class AreaBand
{
    /// <summary>
    /// Half width of the 90 % range as a share of the area, by first-order propagation:
    /// <c>b^2 = (2 c)^2 + sum ((A(L_i + e_i) - A(L_i - e_i)) / (2 A))^2 + m^2</c>, c the share all lengths are off together,
    /// e_i what each length is off, m what the method itself cannot know. A measured band is taken as it is.
    /// </summary>
    /// <param name="shape">A shape that passed the door.</param>
    /// <param name="measured">How it was taken; null for what is usual for the shape.</param>
    public static Fraction Of(PatchShape shape, Measuring? measured)
    {
        ArgumentNullException.ThrowIfNull(shape);
        if (measured?.AreaBand is { } known)
        {
            return known;
        }

        var by = measured?.By ?? MeasuringError.Usual(shape);
        var band = shape switch
        {
            PatchShape.Typed => MeasuringError.EnteredShare(by),
            PatchShape.Outline o => Outline(o, MeasuringError.Of(by)),
            _ => Lengths(shape, MeasuringError.Of(by)),
        };
        return Fraction.Of(Math.Clamp(band, 0.0, 1.0));
    }

    /// <summary>The sentence behind the range, for its working.</summary>
    internal static string Because(PatchShape shape, Measuring? measured) => measured switch
    {
        { AreaBand: not null } => $"The range was worked out when the measure was taken: {Words(measured.By)}.",
        { } => $"{Capital(Words(measured.By))}: common practice, no source read.",
        null => $"How it was measured was not said: {Words(MeasuringError.Usual(shape))} taken. Common practice, no source read.",
    };

    internal static Sureness Sureness(Measuring? measured) => measured switch
    {
        { AreaBand: not null } => Engine.Workings.Sureness.Measured,
        { } => Engine.Workings.Sureness.CommonPractice,
        null => Engine.Workings.Sureness.Assumed,
    };

    private static double Outline(PatchShape.Outline outline, MeasuringError error)
    {
        var corners = CornerError.AreaShare(outline, error.CornerM);
        var scale = 2.0 * (error.CommonShare + error.EachShare);
        return Math.Sqrt(corners * corners + scale * scale);
    }

    private static double Lengths(PatchShape shape, MeasuringError error)
    {
        var areaM2 = PatchArea.Of(shape).SquareMeters;
        var lengths = ShapeLengths.Of(shape);
        var sum = 4.0 * error.CommonShare * error.CommonShare;
        for (var i = 0; i < lengths.Count; i++)
        {
            var errorM = Math.Sqrt(Math.Pow(error.EachShare * lengths[i].Meters, 2) + error.EachM * error.EachM);
            var share = Slope(shape, i, lengths[i].Meters) * errorM / areaM2;
            sum += share * share;
        }

        var method = MethodShare(shape, areaM2);
        return Math.Sqrt(sum + method * method);
    }

    /// <summary>Change of the area per meter of one length, m; by a small step, halved until the shape stays possible.</summary>
    private static double Slope(PatchShape shape, int which, double lengthM)
    {
        for (var stepM = Math.Max(1e-4 * lengthM, 1e-6); stepM > 1e-9; stepM *= 0.25)
        {
            if (Area(shape, which, stepM) is { } more && Area(shape, which, -stepM) is { } less)
            {
                return (more - less) / (2.0 * stepM);
            }

            // At the edge of the possible one side is all there is.
            if ((Area(shape, which, stepM) ?? Area(shape, which, -stepM)) is { } only)
            {
                return (only - PatchArea.Of(shape).SquareMeters) / stepM;
            }
        }

        return 0.0;
    }

    private static double? Area(PatchShape shape, int which, double stepM)
    {
        var moved = ShapeLengths.With(shape, (i, length) => i == which ? Length.FromMeters(Math.Max(0.0, length.Meters + stepM)) : length);
        return Possible(moved) ? PatchArea.Of(moved).SquareMeters : null;
    }

    private static bool Possible(PatchShape shape) => shape switch
    {
        PatchShape.Sides s => TriangleBySides.Area(s.First, s.Second, s.Third) is not null,
        PatchShape.Bow b => b.Rise.Meters > 0.0,
        PatchShape.Taped t => TapedRing.Points(t).All(p => p is not null),
        PatchShape.Pieces p => p.All.All(piece => Possible(piece.Shape)),
        _ => true,
    };

    /// <summary>What an edge does between two widths: half of what trapezoids and Simpson's rule differ by, or 3 % where only trapezoids apply (common practice).</summary>
    private static double MethodShare(PatchShape shape, double areaM2) => shape switch
    {
        PatchShape.Offsets o when OffsetArea.SimpsonApplies(o.Widths) =>
            Math.Abs(OffsetArea.Simpson(o.Step, o.Widths).SquareMeters - OffsetArea.Trapezoid(o.Step, o.Widths).SquareMeters) / areaM2,
        PatchShape.Offsets => 0.03,
        PatchShape.Pieces p => Math.Sqrt(p.All.Sum(piece => Math.Pow(MethodShare(piece.Shape, Math.Max(1e-9, PatchArea.Of(piece.Shape).SquareMeters)) * PatchArea.Of(piece.Shape).SquareMeters / areaM2, 2))),
        _ => 0.0,
    };

    private static string Words(MeasuredBy by) => by switch
    {
        MeasuredBy.Tape => "a tape",
        MeasuredBy.Wheel => "a measuring wheel",
        MeasuredBy.Paces => "paces",
        MeasuredBy.Picture => "drawn over a plan or picture",
        MeasuredBy.PhoneWalk => "the edge walked with a phone",
        MeasuredBy.File => "read from a file drawn elsewhere",
        _ => throw new ArgumentOutOfRangeException(nameof(by), by, "is not a known way of measuring"),
    };

    private static string Capital(string words) => char.ToUpperInvariant(words[0]) + words[1..];
}
