using Seedfall.Engine.Units;

namespace Seedfall.Planning.Ground.Walks;

/// <summary>An edge walked with a phone, made into an outline with its area and an honest range.</summary>
public static class EdgeWalk
{
    private const double StepM = 0.5;
    private const int MostRingPoints = 1500;
    private static readonly double[] TolerancesM = [0.4, 0.2, 0.8];

    /// <summary>The outline of a walk, or why it gives none. Nothing is repaired without a remark.</summary>
    /// <param name="fixes">Positions in the order they were taken.</param>
    /// <param name="origin">Zero point of the lawn's sheet; null to take the first sound fix.</param>
    public static WalkResult Outline(IReadOnlyList<TrackFix> fixes, GeoPoint? origin = null)
    {
        ArgumentNullException.ThrowIfNull(fixes);
        var remarks = new List<string>();
        if (fixes.Count > WalkFacts.MostFixes)
        {
            return new WalkResult.Refused(WalkFault.OutOfSize, $"{fixes.Count:N0} fixes", $"at most {WalkFacts.MostFixes:N0}", origin, [], []);
        }

        var sound = FixCleaning.Sound(fixes, remarks);
        if (sound.Count < WalkFacts.LeastFixes)
        {
            return TooFew(sound.Count, remarks, origin, []);
        }

        var plane = new LocalPlane(origin ?? sound[0].At);
        var path = FixCleaning.OnSheet(sound, plane, remarks);
        GroundPoint[] shown = [.. path.Select(f => f.At)];
        if (path.Count < WalkFacts.LeastFixes)
        {
            return TooFew(path.Count, remarks, plane.Origin, shown);
        }

        if (shown.Any(p => Math.Abs(p.EastM) > LocalPlane.ReachM || Math.Abs(p.NorthM) > LocalPlane.ReachM))
        {
            return new WalkResult.Refused(WalkFault.OutOfSize, $"fixes more than {LocalPlane.ReachM / 1000.0:0} km from the sheet's zero point", "a walk round one lawn", plane.Origin, [], []);
        }

        return Closed(path, plane, remarks);
    }

    private static WalkResult Closed(List<PathFix> path, LocalPlane plane, List<string> remarks)
    {
        GroundPoint[] shown = [.. path.Select(f => f.At)];
        var (first, last, gapM) = WalkClosing.Cut(path);
        var wayM = WalkClosing.Along(path)[^1];
        if (gapM > WalkFacts.MostGapShare * wayM)
        {
            return new WalkResult.Refused(
                WalkFault.NotClosed,
                FormattableString.Invariant($"the walk ends {gapM:0.0} m from its start after {wayM:0} m"),
                "a walk that goes on to the place it started from",
                plane.Origin, shown, []);
        }

        if (path.Count - 1 - last + first is > 0 and var cut)
        {
            remarks.Add(FormattableString.Invariant($"{cut} {(cut == 1 ? "fix" : "fixes")} cut where the end of the walk runs beside its start"));
        }

        if (gapM > 1.0)
        {
            remarks.Add(FormattableString.Invariant($"the walk was closed over a gap of {gapM:0.0} m"));
        }

        var loop = path.GetRange(first, last - first + 1);
        return loop.Count < WalkFacts.LeastFixes ? TooFew(loop.Count, remarks, plane.Origin, shown) : Measured(loop, gapM, plane, remarks);
    }

    private static WalkResult Measured(List<PathFix> loop, double gapM, LocalPlane plane, List<string> remarks)
    {
        GroundPoint[] walked = [.. loop.Select(f => f.At)];
        var areaM2 = PolygonArea.Of(walked, []).SquareMeters;
        if (areaM2 is < WalkFacts.LeastAreaM2 or > WalkFacts.MostAreaM2)
        {
            return new WalkResult.Refused(WalkFault.OutOfSize, FormattableString.Invariant($"an area of {areaM2:0.##} m2"), "a walk round 2 m2 to 100 ha", plane.Origin, walked, []);
        }

        var stepM = Math.Max(StepM, RingLength.Of(walked).Meters / MostRingPoints);
        var stepped = RingThinning.Stepped(loop, stepM);
        var spacingM = RingLength.Of([.. stepped.Select(f => f.At)]).Meters / stepped.Count;
        var ring = RingThinning.Smoothed(stepped, spacingM);
        GroundPoint[] smooth = [.. ring.Select(f => f.At)];
        if (smooth.Distinct().Count() < 3 || LoopCutting.Cut([.. smooth]) is not var (simple, loops))
        {
            return Crossing(smooth, plane);
        }

        var edgeM = RingLength.Of(smooth).Meters;
        var halfM2 = WalkFacts.Deviations90 * WalkError.DeviationM2(ring, edgeM, gapM) + CornersCutM2(spacingM);
        var band = halfM2 / areaM2;
        if (!(band <= WalkFacts.MostBand))
        {
            return new WalkResult.Refused(
                WalkFault.TooPoor,
                FormattableString.Invariant($"the area of about {areaM2:0} m2 would be uncertain by {100.0 * band:0} %"),
                "better fixes (open sky, phone held out, a minute's wait before starting), or a tape: a small lawn is beyond a phone",
                plane.Origin, walked, []);
        }

        if (loops > 0)
        {
            remarks.Add($"{loops} small {(loops == 1 ? "loop" : "loops")} cut out where the path crosses itself");
        }

        return Drawn(simple, areaM2, band, loop.Count, plane, remarks);
    }

    private static WalkResult Drawn(List<GroundPoint> simple, double areaM2, double band, int kept, LocalPlane plane, List<string> remarks)
    {
        foreach (var toleranceM in TolerancesM)
        {
            var corners = RingThinning.Corners(simple, toleranceM);
            if (corners.Distinct().Count() < 3 || RingCrossing.Within(corners) is not null)
            {
                continue;
            }

            var outline = new PatchShape.Outline(RingThinning.Holding(corners, areaM2), []);
            remarks.Add(FormattableString.Invariant($"smoothed and thinned to {corners.Count} corners within {toleranceM} m of the path, the area kept as walked"));
            return new WalkResult.Walked(plane.Origin, outline, Area.FromSquareMeters(areaM2), Fraction.Of(band), RingLength.Of(outline.Ring), kept, remarks);
        }

        return Crossing(simple, plane);
    }

    /// <summary>What four square corners lose to chords between fixes a step apart, each d^2/12 on the average, m2.</summary>
    private static double CornersCutM2(double spacingM) => spacingM * spacingM / 3.0;

    private static WalkResult.Refused Crossing(IReadOnlyList<GroundPoint> ring, LocalPlane plane) => new(
        WalkFault.CrossesItself,
        "the path crosses itself",
        "one round along the edge that does not cross its own way; walk a bed apart from it",
        plane.Origin, ring, RingCrossings.Within(ring));

    private static WalkResult.Refused TooFew(int sound, List<string> remarks, GeoPoint? origin, IReadOnlyList<GroundPoint> shown) => new(
        WalkFault.TooFewFixes,
        remarks.Count == 0 ? $"{sound} fixes" : $"{sound} sound fixes ({string.Join("; ", remarks)})",
        $"at least {WalkFacts.LeastFixes} sound fixes",
        origin, shown, []);
}
