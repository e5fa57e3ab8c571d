using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Water.Coverage;

namespace Seedfall.Planning.Water;

/// <summary>A set's precipitation rate and uniformity, by the best way they are known.</summary>
/// <param name="NominalMmh">Rate with the tap strong enough, mm/h.</param>
/// <param name="LowQuarter">Distribution uniformity of the low quarter.</param>
/// <param name="RateWorking">How the rate is known.</param>
/// <param name="UniformityWorking">How the uniformity is known.</param>
/// <param name="DryCan">True where a can stayed dry.</param>
internal sealed record SetRate(double NominalMmh, Fraction LowQuarter, Working RateWorking, Working UniformityWorking, bool DryCan)
{
    /// <summary>Fewest cans whose lowest quarter says anything.</summary>
    private const int LeastCans = 4;

    /// <summary>Cans the trade asks for.</summary>
    private const int WantedCans = 24;

    /// <summary>Catch cans, else as entered, else from the heads on the plan, else from flow over ground, else the usual rate of its kind.</summary>
    internal static SetRate Of(SprinklerSet set, double areaM2, TapFacts tap, (FlowRate Flow, Working Working)? nozzles = null, SetCoverage? coverage = null)
    {
        var usual = SprinklerDefaults.For(set.Kind);
        if (set.Cans is { } cans && cans.Readings.Any(depth => depth.Millimeters > 0.0))
        {
            return Measured(cans, usual, coverage);
        }

        var (lowQuarter, uniformity) = coverage is null ? (usual.LowQuarter, Uniformity(usual)) : (coverage.LowQuarter, coverage.Uniformity);
        if (set.Rate is { } typed)
        {
            return new SetRate(typed.MillimetersPerHour, lowQuarter, new Working("PR as entered", [new("PR", "precipitation rate", typed.InchesPerHour, "in/h")], "entered for this set", Sureness.Measured), uniformity, false);
        }

        if (coverage is not null)
        {
            return new SetRate(coverage.MeanMmh, lowQuarter, coverage.Rate, uniformity, false);
        }

        if ((set.Flow ?? nozzles?.Flow) is { } flow)
        {
            return FromFlow(flow, areaM2 / set.Positions, lowQuarter, uniformity, set.Flow is null ? $"{nozzles!.Value.Working.Source}; over the ground of one position" : "entered flow over the ground of one position", set.Flow is null ? nozzles!.Value.Working.Sureness : Sureness.Computed);
        }

        return set.Kind == SprinklerKind.HandHose
            ? FromFlow(tap.Flow, areaM2 / set.Positions, lowQuarter, uniformity, "the whole tap, walked evenly over the ground", Sureness.Assumed)
            : new SetRate(usual.Rate.MillimetersPerHour, lowQuarter, new Working("PR as usual for the kind", [new("PR", "precipitation rate", usual.Rate.InchesPerHour, "in/h")], usual.Source, usual.Sureness), uniformity, false);
    }

    internal IEnumerable<Assumption> Assumptions(SprinklerSet set, int number)
    {
        if (RateWorking.Sureness is Sureness.Measured or Sureness.Computed)
        {
            yield break;
        }

        yield return new Assumption(
            $"assumed.water.set-{number}.rate",
            $"{set.Name}: the precipitation rate was not measured; the usual one for its kind is taken.",
            "Its minutes may be wrong by half.",
            "Set out catch cans and run it for 15 minutes.");
    }

    internal IEnumerable<Advice> Advice(SprinklerSet set, int number)
    {
        var cans = set.Cans?.Readings.Count;
        if (cans is < WantedCans)
        {
            yield return new Advice(
                $"water.set-{number}.few-cans",
                $"{set.Name}: {cans} cans give a rough rate. For an answer good to a quarter, hose-moved sprinklers need 6 to more than 50 cans, in-ground heads 2 to 8; 24 is the usual count.",
                "Journal of the American Water Resources Association 2007; UC Davis CCUH on 24 or more cans",
                Sureness.Published);
        }

        if (DryCan)
        {
            yield return new Advice(
                $"water.set-{number}.dry-can",
                $"{set.Name}: a can stayed dry. No run time waters that spot: move or add a head first.",
                "arithmetic on the cans",
                Sureness.Measured);
        }
    }

    private static SetRate Measured(CatchCanTest cans, SprinklerDefaults usual, SetCoverage? coverage)
    {
        var rate = PrecipitationRateOf.Cans(cans);
        var enough = cans.Readings.Count >= LeastCans;
        var measured = enough ? WaterUniformity.LowQuarter(cans.Readings) : null;
        return new SetRate(
            rate.MillimetersPerHour,
            measured is { } lowQuarter ? Fraction.Of(lowQuarter) : coverage?.LowQuarter ?? usual.LowQuarter,
            new Working("PR = mean depth * 60 / minutes", [new("d", "mean depth in the cans", cans.Readings.Average(d => d.Inches), "in"), new("t", "minutes run", cans.Minutes, "min"), new("n", "cans", cans.Readings.Count, "")], "catch cans on this lawn", Sureness.Measured),
            measured is null ? coverage?.Uniformity ?? Uniformity(usual) : new Working("DU = mean of the driest quarter / mean of all", [new("n", "cans", cans.Readings.Count, "")], "catch cans on this lawn; UC Davis CCUH", Sureness.Measured),
            cans.Readings.Any(d => d.Millimeters <= 0.0));
    }

    private static Working Uniformity(SprinklerDefaults usual) => new("DU as usual for the kind", [new("DU", "distribution uniformity, low quarter", usual.LowQuarter.Value, "")], usual.Source, usual.Sureness == Sureness.Published ? Sureness.Published : Sureness.Assumed);

    private static SetRate FromFlow(FlowRate flow, double areaM2, Fraction lowQuarter, Working uniformity, string source, Sureness sureness)
    {
        var area = Area.FromSquareMeters(areaM2);
        return new SetRate(
            PrecipitationRateOf.Flow(flow, area).MillimetersPerHour,
            lowQuarter,
            new Working("PR = 96.25 Q / A", [new("Q", "flow", flow.GallonsPerMinute, "gpm"), new("A", "ground of one position", area.SquareFeet, "sq ft")], source, sureness),
            uniformity,
            false);
    }
}
