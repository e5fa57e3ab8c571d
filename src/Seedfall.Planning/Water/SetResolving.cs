using Seedfall.Engine.Soil;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Water;

/// <summary>The sets of a lawn with every gap filled and said.</summary>
internal sealed record SetResolving(IReadOnlyList<SetFacts> Sets, IReadOnlyList<Assumption> Assumptions, IReadOnlyList<Advice> Advice)
{
    private const double RoundUpGuard = 1e-9;

    internal static SetResolving Of(Lawn lawn, IReadOnlyList<PatchSummary> patches, TapFacts tap, SoilTexture texture)
    {
        var (sets, assumptions, advice) = (new List<SetFacts>(), new List<Assumption>(), new List<Advice>());
        var entered = lawn.Water?.Sets ?? [];
        var sharing = entered.SelectMany(set => set.PatchIds.Distinct()).GroupBy(id => id).ToDictionary(ids => ids.Key, ids => ids.Count());
        foreach (var set in entered)
        {
            var ids = set.PatchIds.Distinct().ToArray();
            var areaM2 = patches.Where(p => ids.Contains(p.Id)).Sum(p => p.Area.Value / sharing[p.Id]);
            if (areaM2 > 0.0)
            {
                var rate = SetRate.Of(set, areaM2, tap);
                assumptions.AddRange(rate.Assumptions(set, sets.Count + 1));
                advice.AddRange(rate.Advice(set, sets.Count + 1));
                sets.Add(Facts(set, areaM2, rate, sets.Count + 1, tap, texture, Slope(lawn, ids)));
            }
        }

        var dry = patches.Where(p => !sharing.ContainsKey(p.Id)).ToArray();
        if (dry.Length > 0)
        {
            var moved = Moved(dry, tap);
            assumptions.Add(NoSprinkler(dry, entered.Count > 0, moved));
            var areaM2 = dry.Sum(p => p.Area.Value);
            sets.Add(Facts(moved, areaM2, SetRate.Of(moved, areaM2, tap), sets.Count + 1, tap, texture, Slope(lawn, [.. dry.Select(p => p.Id)])));
        }

        return new SetResolving(sets, assumptions, advice);
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

    private static SetFacts Facts(SprinklerSet set, double areaM2, SetRate rate, int number, TapFacts tap, SoilTexture texture, double slopePercent)
    {
        var key = $"set-{number}";
        var wantedLpm = set.Flow?.LitersPerMinute ?? rate.NominalMmh * areaM2 / set.Positions / 60.0;
        var share = Math.Min(1.0, tap.Flow.LitersPerMinute / wantedLpm);
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
            SetFigures.For(set, key, rate, areaM2, wantedLpm, share, multiplier, intake, slopePercent, tap))
        {
            PatchIds = [.. set.PatchIds.Distinct()],
        };
    }
}
