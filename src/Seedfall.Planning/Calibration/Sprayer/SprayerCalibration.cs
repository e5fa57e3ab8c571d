using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Materials;

namespace Seedfall.Planning.Calibration.Sprayer;

/// <summary>What a calibration says.</summary>
/// <param name="Output">Carrier put out per area, shown per 1,000 sq ft.</param>
/// <param name="PerAcre">The same per acre.</param>
/// <param name="Farthest">Share of the mean by which the farthest run differs; null for a single run.</param>
/// <param name="Walk">Speed walked; null where no time or width was taken.</param>
/// <param name="Flow">What all nozzles together put out; null where no time was taken.</param>
/// <param name="Wear">Nozzle by nozzle; empty where only one was caught and no rating is known.</param>
/// <param name="Steady">True where two runs or more lie within 5 % of their mean.</param>
public sealed record SprayerCalibration(
    Figure Output, Figure PerAcre, Figure? Farthest, Figure? Walk, Figure? Flow, IReadOnlyList<NozzleFinding> Wear, bool Steady)
{
    /// <summary>Applications after which to calibrate again (NC State Extension).</summary>
    public const int GoodForApplications = 4;

    private const string Timed = "timed-area method: Pesticide Environmental Stewardship, spray gun; Oklahoma State University Extension";
    private const string Ounces = "1/128-acre method: Michigan State University and K-State Extension";

    /// <summary>Carrier put out per area.</summary>
    public VolumePerArea Rate => VolumePerArea.FromLitersPerSquareMeter(Output.Value);

    /// <summary>Speed walked; null where not known.</summary>
    public Speed? Speed => Walk is { } walk ? Engine.Units.Speed.FromMetersPerSecond(walk.Value) : null;

    /// <summary>
    /// The calibration a test gives. Refill and catch: <c>rate = volume / area</c>, a catch scaled by <c>walk time / catch time</c>;
    /// course: the mean over nozzles of ounces is gallons per acre.
    /// </summary>
    /// <param name="test">What was done.</param>
    /// <param name="rating">The nozzle's rated flow and its pressure; null where not known.</param>
    public static SprayerCalibration Of(SprayerTest test, NozzleRating? rating = null)
    {
        ArgumentNullException.ThrowIfNull(test);
        return test switch
        {
            SprayerTest.Refill refill => OfRefill(refill),
            SprayerTest.Catch caught => OfCatch(caught),
            SprayerTest.OunceCourse course => OfCourse(course, rating),
            _ => throw new ArgumentOutOfRangeException(nameof(test), test, "is not a known test"),
        };
    }

    private static SprayerCalibration OfRefill(SprayerTest.Refill test)
    {
        var used = RunMean.Of([.. test.Used.Select(v => v.Liters)]);
        var output = SprayerOutput.OverArea(Volume.FromLiters(used.Mean), test.Ground);
        var seconds = test.Seconds.Count > 0 ? RunMean.Of(test.Seconds) : null;
        return Assemble(
            output, used, Walked(test.Ground, test.Width, seconds), seconds is null ? null : FlowRate.FromLitersPerMinute(used.Mean / seconds.Mean * 60.0), [], "rate = mean volume / area", Timed,
            new WorkingInput("V", "water to refill, mean", Volume.FromLiters(used.Mean).Gallons, "gal"), new WorkingInput("A", "area walked", test.Ground.SquareFeet, "sq ft"), new WorkingInput("n", "runs", used.Runs, ""));
    }

    private static SprayerCalibration OfCatch(SprayerTest.Catch test)
    {
        var (seconds, caught) = (RunMean.Of(test.Seconds), RunMean.Of([.. test.Caught.Select(v => v.Liters)]));
        var lasted = test.CatchSeconds ?? seconds.Mean;
        var flow = Flowing(Volume.FromLiters(caught.Mean), lasted);
        var output = SprayerOutput.OverArea(Volume.FromLiters(flow.LitersPerMinute * seconds.Mean / 60.0), test.Ground);
        return Assemble(
            output, Farther(seconds, caught), Walked(test.Ground, test.Width, seconds), flow, [], "rate = mean catch x (walk time / catch time) / area", Timed,
            new WorkingInput("V", "caught, mean", Volume.FromLiters(caught.Mean).Gallons, "gal"), new WorkingInput("t", "walk, mean", seconds.Mean, "s"), new WorkingInput("c", "catch", lasted, "s"),
            new WorkingInput("A", "area walked", test.Ground.SquareFeet, "sq ft"), new WorkingInput("n", "walks", seconds.Runs, ""));
    }

    private static SprayerCalibration OfCourse(SprayerTest.OunceCourse test, NozzleRating? rating)
    {
        var (seconds, caught) = (RunMean.Of(test.Seconds), RunMean.Of([.. test.Caught.Select(v => v.Liters)]));
        var flows = test.Caught.Select(v => Flowing(v, seconds.Mean)).ToList();
        var output = SprayerOutput.OverArea(Volume.FromLiters(caught.Mean), SprayerOutput.OunceSquare);
        var walk = WalkingPace.Over(SprayerOutput.Course(test.Spacing), seconds.Mean);
        return Assemble(
            output, seconds, walk, FlowRate.FromLitersPerMinute(flows.Sum(f => f.LitersPerMinute)), NozzleWear.Check(flows, rating, test.Pressure), "gal per acre = mean of fl oz per nozzle on 1/128 acre", Ounces,
            new WorkingInput("oz", "caught per nozzle, mean", Volume.FromLiters(caught.Mean).FluidOunces, "fl oz"), new WorkingInput("t", "walk over the course, mean", seconds.Mean, "s"),
            new WorkingInput("s", "nozzle spacing", test.Spacing.Inches, "in"), new WorkingInput("L", "course", SprayerOutput.Course(test.Spacing).Feet, "ft"), new WorkingInput("n", "walks", seconds.Runs, ""));
    }

    private static SprayerCalibration Assemble(
        VolumePerArea output, RunMean runs, Speed? walk, FlowRate? flow, IReadOnlyList<NozzleFinding> wear, string formula, string source, params WorkingInput[] inputs)
    {
        var note = runs.Runs > 1 ? null : "One run only: walk it twice more to see how steady the pace is.";
        return new(
            Worked.Sourced("sprayer.output", "Carrier put out", QuantityKind.VolumePerArea, output.LitersPerSquareMeter, formula, source, Sureness.Measured, note, inputs),
            Worked.Computed("sprayer.output.acre", "The same per acre", QuantityKind.CarrierRate, output.LitersPerSquareMeter, "gal per acre = 43.56 x gal per 1,000 sq ft", null, new WorkingInput("g", "carrier put out", output.GallonsPerThousandSquareFeet, "gal per 1,000 sq ft")),
            runs.Runs < 2 ? null : Worked.Computed("sprayer.spread", "Farthest run from the mean", QuantityKind.Share, runs.Farthest, "largest difference from the mean / mean", null, new WorkingInput("n", "runs", runs.Runs, ""), new WorkingInput("limit", "steady within", RunMean.Steady * 100.0, "%")),
            walk is { } v ? Worked.Computed("sprayer.walk", "Walking speed", QuantityKind.Speed, v.MetersPerSecond, "v = course / time, course = area / width", null, [.. inputs.Where(i => i.Unit is "s" or "sq ft" or "ft" or "in" && i.Symbol is not "c")]) : null,
            flow is { } q ? Worked.Computed("sprayer.flow", "All nozzles together", QuantityKind.FlowRate, q.LitersPerMinute, "q = rate x width x v, or volume / time of all nozzles", null, inputs) : null,
            wear,
            runs.IsSteady);
    }

    private static FlowRate Flowing(Volume caught, double seconds) => seconds > 0.0
        ? FlowRate.FromLitersPerMinute(caught.Liters / seconds * 60.0)
        : throw new ArgumentOutOfRangeException(nameof(seconds), seconds, "a time above 0 s is needed");

    private static Speed? Walked(Area ground, Length? width, RunMean? seconds) =>
        width is { } w && seconds is not null ? WalkingPace.Over(WalkingPace.Course(ground, w), seconds.Mean) : null;

    /// <summary>The less steady of two sets of runs.</summary>
    private static RunMean Farther(RunMean a, RunMean b) => b.Runs > 1 && b.Farthest > a.Farthest ? b : a;
}
