using Seedfall.Planning.Water;

namespace Seedfall.Planning.Ground.Door;

/// <summary>What the taps give, alone and together, and the pressure behind them.</summary>
internal static class TapRules
{
    internal const double MostTapLitersPerMinute = 400.0;
    internal const double MostKilopascals = 2000.0;
    private const double LeastTapLitersPerMinute = 0.2;

    /// <summary>How far two bucket tests of the same flow may lie apart. Assumed.</summary>
    private const double Reading = 0.05;

    internal static void Check(WaterSupply water, Findings found)
    {
        found.Above("water.flow", water.Flow?.LitersPerMinute, MostTapLitersPerMinute, "L/min");
        Bucket(water.Bucket, found);
        Pressure(water.Pressure, found);
        found.Once([.. water.OtherTaps.Select(t => t.Name)], i => $"water.otherTaps[{i}].name", "tap name");
        for (var i = 0; i < water.OtherTaps.Count; i++)
        {
            found.Words($"water.otherTaps[{i}].name", water.OtherTaps[i].Name, 60);
            found.Above($"water.otherTaps[{i}].flow", water.OtherTaps[i].Flow.LitersPerMinute, MostTapLitersPerMinute, "L/min");
        }

        Together(water, found);
    }

    /// <summary>What the first tap gives, by bucket or typed; null where not known or impossible.</summary>
    internal static double? FirstLpm(WaterSupply water) =>
        (water.Bucket is { Seconds: > 0.0 } bucket ? bucket.Volume.Liters / (bucket.Seconds / 60.0) : water.Flow?.LitersPerMinute) is > 0.0 and var lpm && double.IsFinite(lpm) ? lpm : null;

    private static void Bucket(BucketTest? test, Findings found)
    {
        if (test is not { } bucket)
        {
            return;
        }

        found.Above("water.bucket.volume", bucket.Volume.Liters, 2000.0, "L");
        found.Range("water.bucket.time", bucket.Seconds, 0.5, 36000.0, "s");
        if (bucket.Seconds > 0.0 && bucket.Volume.Liters > 0.0 && !(bucket.Volume.Liters / (bucket.Seconds / 60.0) is >= LeastTapLitersPerMinute and <= MostTapLitersPerMinute))
        {
            found.Add("water.bucket", Findings.Text(bucket.Volume.Liters / (bucket.Seconds / 60.0), "L/min"), "a tap flow from 0.2 to 400 L/min: check volume and seconds");
        }
    }

    private static void Pressure(PressureTest? test, Findings found)
    {
        if (test is not { } pressure)
        {
            return;
        }

        found.Above("water.pressure.still", pressure.Still.Kilopascals, MostKilopascals, "kPa");
        found.Above("water.pressure.at", pressure.At?.LitersPerMinute, MostTapLitersPerMinute, "L/min");
        if (pressure.Still.Kilopascals > 0.0 && pressure.Running is { } running && !(running.Kilopascals >= 0.0 && running < pressure.Still))
        {
            found.Add("water.pressure.running", Findings.Text(running.Kilopascals, "kPa"), $"below the still pressure of {Findings.Text(pressure.Still.Kilopascals, "kPa")}, and not below 0");
        }

        if (pressure.Running is null != pressure.At is null)
        {
            found.Add("water.pressure", pressure.At is null ? "a running pressure without its flow" : "a flow without its running pressure", "both, read at the same time, or neither");
        }
    }

    /// <summary>All taps open give no less than the strongest alone and no more than each alone, added; a bucket's reading apart.</summary>
    private static void Together(WaterSupply water, Findings found)
    {
        if (water.Together is not { } together || water.OtherTaps.Any(t => !(t.Flow.LitersPerMinute > 0.0)))
        {
            return;
        }

        if (water.OtherTaps.Count == 0)
        {
            found.Add("water.together", Findings.Text(together.LitersPerMinute, "L/min"), "at least one tap beside the first");
            return;
        }

        var first = FirstLpm(water);
        double[] alone = [.. water.OtherTaps.Select(t => t.Flow.LitersPerMinute), .. first is { } lpm ? [lpm] : Array.Empty<double>()];
        var most = first is null ? double.PositiveInfinity : alone.Sum();
        if (!(together.LitersPerMinute >= alone.Max() * (1.0 - Reading) && together.LitersPerMinute > 0.0))
        {
            found.Add("water.together", Findings.Text(together.LitersPerMinute, "L/min"), $"no less than the strongest tap alone, {Findings.Text(alone.Max(), "L/min")}");
        }
        else if (!(together.LitersPerMinute <= most * (1.0 + Reading)))
        {
            found.Add("water.together", Findings.Text(together.LitersPerMinute, "L/min"), $"no more than the taps alone, added: {Findings.Text(most, "L/min")}");
        }
        else
        {
            found.Above("water.together", together.LitersPerMinute, 10.0 * MostTapLitersPerMinute, "L/min");
        }
    }
}
