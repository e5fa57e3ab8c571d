namespace Seedfall.Planning.Ground.Walks;

/// <summary>Takes out what cannot be a position on the walk.</summary>
internal static class FixCleaning
{
    /// <summary>The fixes that are points of the earth with a usable accuracy, in order of time, poor ones dropped.</summary>
    internal static List<TrackFix> Sound(IReadOnlyList<TrackFix> fixes, List<string> remarks)
    {
        var real = fixes.Where(f =>
            Math.Abs(f.At.LatitudeDeg) <= LocalPlane.MostLatitudeDeg && Math.Abs(f.At.LongitudeDeg) <= 180.0
            && f.AccuracyM is null or (> 0.0 and < double.PositiveInfinity)).ToList();
        Remark(remarks, fixes.Count - real.Count, "without a usable position");
        if (real.TrueForAll(f => f.Time is not null))
        {
            var inOrder = InOrder(real);
            Remark(remarks, real.Count - inOrder.Count, "out of order in time");
            real = inOrder;
        }

        var middleM = Middle([.. real.Where(f => f.AccuracyM is not null).Select(f => f.AccuracyM!.Value)]);
        var mostM = Math.Min(WalkFacts.PoorM, middleM * WalkFacts.PoorTimes);
        var good = real.Where(f => f.AccuracyM is null || f.AccuracyM <= mostM).ToList();
        Remark(remarks, real.Count - good.Count, FormattableString.Invariant($"less accurate than {mostM:0} m"));
        return good;
    }

    /// <summary>On the sheet, without jumps no walker makes: the longest stretch is kept, and every other that fits to it.</summary>
    internal static List<PathFix> OnSheet(List<TrackFix> fixes, LocalPlane plane, List<string> remarks)
    {
        var timed = fixes.TrueForAll(f => f.Time is not null);
        if (!timed)
        {
            remarks.Add(FormattableString.Invariant($"the track carries no times: a walk of {WalkFacts.UsualSpeed} m/s is taken, and jumps cannot be told"));
        }

        if (fixes.Exists(f => f.AccuracyM is null))
        {
            remarks.Add(FormattableString.Invariant($"the track does not say how accurate its fixes are: {WalkFacts.UsualAccuracyM} m is taken where it does not"));
        }

        var path = new List<PathFix>(fixes.Count);
        foreach (var fix in fixes)
        {
            var at = plane.ToGround(fix.At);
            var seconds = timed ? (fix.Time!.Value - fixes[0].Time!.Value).TotalSeconds
                : path.Count == 0 ? 0.0 : path[^1].Seconds + RingLength.Apart(path[^1].At, at) / WalkFacts.UsualSpeed;
            if (path.Count == 0 || path[^1].At != at)
            {
                path.Add(new(at, seconds, (fix.AccuracyM ?? WalkFacts.UsualAccuracyM) * WalkFacts.DeviationPerAccuracy));
            }
        }

        var kept = timed ? WithoutJumps(path) : path;
        Remark(remarks, path.Count - kept.Count, "that jump faster than anybody walks");
        return kept;
    }

    private static List<PathFix> WithoutJumps(List<PathFix> path)
    {
        var stretches = new List<List<PathFix>>();
        foreach (var fix in path)
        {
            if (stretches.Count > 0 && Fits(stretches[^1][^1], fix))
            {
                stretches[^1].Add(fix);
            }
            else
            {
                stretches.Add([fix]);
            }
        }

        if (stretches.Count < 2)
        {
            return path;
        }

        var longest = stretches.IndexOf(stretches.MaxBy(s => s.Count)!);
        var kept = new LinkedList<List<PathFix>>([stretches[longest]]);
        for (var i = longest + 1; i < stretches.Count; i++)
        {
            if (Fits(kept.Last!.Value[^1], stretches[i][0]))
            {
                kept.AddLast(stretches[i]);
            }
        }

        for (var i = longest - 1; i >= 0; i--)
        {
            if (Fits(stretches[i][^1], kept.First!.Value[0]))
            {
                kept.AddFirst(stretches[i]);
            }
        }

        return [.. kept.SelectMany(s => s)];
    }

    private static bool Fits(PathFix before, PathFix after) =>
        RingLength.Apart(before.At, after.At) <= WalkFacts.MostSpeed * (after.Seconds - before.Seconds) + 0.5 * Math.Max(before.DeviationM, after.DeviationM);

    private static List<TrackFix> InOrder(List<TrackFix> fixes)
    {
        var kept = new List<TrackFix>(fixes.Count);
        foreach (var fix in fixes)
        {
            if (kept.Count == 0 || fix.Time > kept[^1].Time)
            {
                kept.Add(fix);
            }
        }

        return kept;
    }

    private static double Middle(double[] values)
    {
        Array.Sort(values);
        return values.Length == 0 ? double.PositiveInfinity : values[values.Length / 2];
    }

    private static void Remark(List<string> remarks, int count, string why)
    {
        if (count > 0)
        {
            remarks.Add(FormattableString.Invariant($"{count} {(count == 1 ? "fix" : "fixes")} dropped: {why}"));
        }
    }
}
