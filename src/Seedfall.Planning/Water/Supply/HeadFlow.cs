using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Water.Supply;

/// <summary>What a set puts out by its nozzles, the tap's pressure and the hose between; and the most a hose can bring.</summary>
internal static class HeadFlow
{
    /// <summary>Bore taken where a hose is not described but a nozzle is: 5/8 in, of no length.</summary>
    private static readonly Length UsualBore = Length.FromInches(0.625);

    /// <summary>Flow of all heads that run together and its working; null where no nozzle is rated.</summary>
    internal static (FlowRate Flow, Working Working)? Of(SprinklerSet set, WaterSupply? supply, TapFacts tap)
    {
        if (set.Nozzle is not { } nozzle)
        {
            return null;
        }

        if (supply?.Pressure is not { } test)
        {
            var heads = AtOnce(set);
            return (nozzle.Flow * heads, new Working(
                "Q = n Qr",
                [new("n", "heads at once", heads, ""), new("Qr", "rated flow of one", nozzle.Flow.GallonsPerMinute, "gpm"), new("Pr", "at", nozzle.At.PoundsPerSquareInch, "psi")],
                "rated flow; the tap's pressure was not read, so it is taken to be the rated one",
                Sureness.Assumed));
        }

        var line = Line(set, nozzle, test, tap);
        return (line.Flow, line.Figures[0].Working);
    }

    /// <summary>Pressure left at the head of what it is rated for; null where no nozzle is rated or no pressure read.</summary>
    internal static Figure? PressureLeft(SprinklerSet set, WaterSupply? supply, TapFacts tap, string key)
    {
        if (set.Nozzle is not { } nozzle || supply?.Pressure is not { } test)
        {
            return null;
        }

        var share = Line(set, nozzle, test, tap).Figures[1];
        return share with { Id = $"water.{key}.pressure", Label = $"{set.Name}: pressure left at the head, of what it is rated for" };
    }

    /// <summary>
    /// Most a hose brings with its end wide open: P(tap, Q) = loss(hose, Q), both of the power 1.852 of Q, so in closed form
    /// Q = (P0 / ((P0 - P1) / Q1^1.852 + k))^(1/1.852); null where no hose is described or no pressure read.
    /// </summary>
    internal static Figure? MostThrough(SprinklerSet set, WaterSupply? supply, TapFacts tap, string key)
    {
        if (set.Hose is not { } hose || supply?.Pressure is not { } test || hose.Length.Meters <= 0.0)
        {
            return null;
        }

        var pressure = TapPressureOf(test, tap);
        var unit = FlowRate.FromGallonsPerMinute(1.0);
        var perFlow = HazenWilliams.Loss(unit, hose.Length, hose.Bore).PoundsPerSquareInch
            + ((pressure.Static - pressure.Running).PoundsPerSquareInch / Math.Pow(pressure.RunningFlow.GallonsPerMinute, HazenWilliams.FlowExponent));
        var most = FlowRate.FromGallonsPerMinute(Math.Pow(pressure.Static.PoundsPerSquareInch / perFlow, 1.0 / HazenWilliams.FlowExponent));
        return new Figure($"water.{key}.hose", $"{set.Name}: most the hose brings with its end open", QuantityKind.FlowRate, most.LitersPerMinute, new Working(
            "Q = (P0 / ((P0 - P1) / Q1^1.852 + k))^(1/1.852)",
            [
                new("P0", "pressure at the tap, shut", pressure.Static.PoundsPerSquareInch, "psi"),
                new("P1", "pressure at the tap, running", pressure.Running.PoundsPerSquareInch, "psi"),
                new("Q1", "flow then", pressure.RunningFlow.GallonsPerMinute, "gpm"),
                new("L", "hose", hose.Length.Feet, "ft"),
                new("d", "bore", hose.Bore.Inches, "in"),
                new("k", "loss in the hose at 1 gpm", HazenWilliams.Loss(unit, hose.Length, hose.Bore).PoundsPerSquareInch, "psi"),
            ],
            "Hazen and Williams for hose and service pipe, C 140",
            Sureness.Computed,
            "Printed hose charts lose 7 to 13 % more; a bucket at the hose's own end is better."));
    }

    /// <summary>Heads that run together: all of a fixed set, one of a moved sprinkler.</summary>
    private static int AtOnce(SprinklerSet set) => set.Positions > 1 ? 1 : Math.Max(1, set.Heads.Count);

    private static HoseLine Line(SprinklerSet set, NozzleRating nozzle, PressureTest test, TapFacts tap) =>
        HoseLine.Of(TapPressureOf(test, tap), set.Hose?.Length ?? Length.Zero, set.Hose?.Bore ?? UsualBore, nozzle with { Flow = nozzle.Flow * AtOnce(set) });

    private static TapPressure TapPressureOf(PressureTest test, TapFacts tap) => test is { Running: { } running, At: { } at }
        ? new TapPressure(test.Still, running, at)
        : TapPressure.FromBucket(test.Still, tap.Flow);
}
