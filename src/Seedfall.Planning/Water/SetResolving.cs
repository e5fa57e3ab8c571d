using Seedfall.Engine.Soil;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water.Coverage;
using Seedfall.Planning.Water.Supply;

namespace Seedfall.Planning.Water;

/// <summary>The sets of a lawn, and the taps they stand on, with every gap filled and said.</summary>
internal sealed record SetResolving(IReadOnlyList<SetFacts> Sets, SupplyLines Lines, IReadOnlyList<Assumption> Assumptions, IReadOnlyList<Advice> Advice)
{
    private const double RoundUpGuard = 1e-9;

    internal static SetResolving Of(Lawn lawn, IReadOnlyList<PatchSummary> patches, TapFacts tap, SoilTexture texture)
    {
        var (sets, assumptions, advice) = (new List<SetFacts>(), new List<Assumption>(), new List<Advice>());
        var entered = lawn.Water?.Sets ?? [];
        var lines = SupplyLines.Of(lawn.Water, tap);
        var sharing = entered.SelectMany(set => set.PatchIds.Distinct()).GroupBy(id => id).ToDictionary(ids => ids.Key, ids => ids.Count());
        foreach (var set in entered)
        {
            var ids = set.PatchIds.Distinct().ToArray();
            var areaM2 = patches.Where(p => ids.Contains(p.Id)).Sum(p => p.Area.Value / sharing[p.Id]);
            if (areaM2 > 0.0)
            {
                var (nozzles, coverage) = (HeadFlow.Of(set, lawn.Water, tap), SetCoverage.Of(set, lawn));
                var rate = SetRate.Of(set, areaM2, tap, nozzles, coverage);
                assumptions.AddRange(rate.Assumptions(set, sets.Count + 1));
                advice.AddRange(rate.Advice(set, sets.Count + 1));
                var drawn = set.Flow ?? nozzles?.Flow ?? (coverage is { } placed ? new FlowRate(placed.DrawLpm) : null);
                sets.Add(Facts(lawn, set, drawn, areaM2, rate, sets.Count + 1, lines, tap, texture));
            }
        }

        var dry = patches.Where(p => !sharing.ContainsKey(p.Id)).ToArray();
        if (dry.Length > 0)
        {
            var moved = Moved(dry, tap);
            assumptions.Add(NoSprinkler(dry, entered.Count > 0, moved));
            var areaM2 = dry.Sum(p => p.Area.Value);
            sets.Add(Facts(lawn, moved, null, areaM2, SetRate.Of(moved, areaM2, tap), sets.Count + 1, lines, tap, texture));
        }

        return new SetResolving(sets, lines, assumptions, advice);
    }

    /// <summary>An oscillating sprinkler moved through as many positions as the tap needs.</summary>
    private static SprinklerSet Moved(IReadOnlyList<PatchSummary> dry, TapFacts tap)
    {
        var rate = SprinklerDefaults.For(SprinklerKind.Oscillating).Rate;
        var coveredM2 = tap.Flow.LitersPerMinute * 60.0 / rate.MillimetersPerHour;
        return new SprinklerSet
        {
            Name = "moved sprinkler",
            PatchIds = [.. dry.Select(p => p.Id)],
            Kind = SprinklerKind.Oscillating,
            Positions = Math.Max(1, (int)Math.Ceiling((dry.Sum(p => p.Area.Value) / coveredM2) - RoundUpGuard)),
        };
    }

    private static Assumption NoSprinkler(IReadOnlyList<PatchSummary> dry, bool some, SprinklerSet moved) => new(
        "assumed.water.sets",
        $"{(some ? $"No sprinkler reaches {string.Join(", ", dry.Select(p => p.Name))}" : "No sprinklers were entered")}: one oscillating sprinkler moved through {moved.Positions} position{(moved.Positions == 1 ? "" : "s")} is assumed.",
        "Minutes and hose moves rest on it.",
        "Enter the sprinklers, and set out catch cans under each.");

    private static double Slope(Lawn lawn, IReadOnlyList<string> ids) =>
        lawn.Patches.Where(p => ids.Contains(p.Id)).Select(p => p.SlopePercent ?? 0.0).DefaultIfEmpty(0.0).Max();

    /// <summary>Draw and rate on its own tap: no more than the tap has free, nor than its hose brings; the rate falls with the draw.</summary>
    private static SetFacts Facts(Lawn lawn, SprinklerSet set, FlowRate? drawn, double areaM2, SetRate rate, int number, SupplyLines lines, TapFacts tap, SoilTexture texture)
    {
        var (key, slopePercent) = ($"set-{number}", Slope(lawn, [.. set.PatchIds]));
        var wantedLpm = drawn?.LitersPerMinute ?? rate.NominalMmh * areaM2 / set.Positions / 60.0;
        var hose = HeadFlow.MostThrough(set, lawn.Water, tap, key);
        var mostLpm = Math.Min(lines.Free(set.Tap).LitersPerMinute, hose?.Value ?? double.PositiveInfinity);
        var share = Math.Min(1.0, mostLpm / wantedLpm);
        var intake = SoilIntake.Bare(texture, slopePercent);
        var storage = CycleSoak.SurfaceStorage(slopePercent);
        var multiplier = WaterUniformity.RunTimeMultiplier(rate.LowQuarter);
        return new SetFacts(
            set.Name,
            key,
            set.Kind == SprinklerKind.HandHose,
            set.Positions,
            areaM2,
            rate.NominalMmh,
            rate.NominalMmh * share,
            wantedLpm * share,
            multiplier,
            intake.MillimetersPerHour,
            storage.Millimeters,
            [
                .. SetFigures.For(set, key, rate, areaM2, wantedLpm, share, multiplier, intake, slopePercent, new FlowRate(mostLpm)),
                .. hose is null ? Array.Empty<Figure>() : [hose],
                .. HeadFlow.PressureLeft(set, lawn.Water, tap, key) is { } left ? [left] : Array.Empty<Figure>(),
            ])
        {
            PatchIds = [.. set.PatchIds.Distinct()],
            Tap = set.Tap,
            Timer = set.Timer,
        };
    }
}
