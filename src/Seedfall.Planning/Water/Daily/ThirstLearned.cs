using Seedfall.Engine.Simulation.Watering;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Water;

/// <summary>How much faster or slower this seedbed dries than computed, as finger tests tell it.</summary>
/// <param name="Factor">Factor on the evaporative demand; 1 where nothing was felt.</param>
/// <param name="Tests">Finger tests used.</param>
internal sealed record ThirstLearned(double Factor, int Tests)
{
    /// <summary>Spread of the logarithm before anything was felt (assumed).</summary>
    private const double Spread = 0.25;

    /// <summary>Share of tests that say nothing: a stone, a shaded spot, another patch. Keeps one test from settling anything.</summary>
    private const double Lapse = 0.1;

    /// <summary>Suction at which half would call it too dry, and soggy, MPa (assumed).</summary>
    private const double TooDryMPa = 0.3;

    private const double SoggyMPa = 0.012;

    /// <summary>Spread of those judgments in the logarithm of the suction (assumed).</summary>
    private const double JudgedWithin = 0.5;

    private const double WetMPa = -0.3;
    private const double WetWithinMm = 10.0;
    private const int Candidates = 13;
    private const double Reach = 0.6;

    private static readonly double[] BottomMm = [3.0, 8.0, 20.0, 60.0, 150.0, 300.0];

    internal static ThirstLearned Of(DailyScene scene, WaterKnown known)
    {
        // A test of this morning, before the first round, found the ground as the night left it.
        var morning = (24 * known.Today) + scene.Starts[0];
        var tests = WaterKnown.Mine<LogEntry.FingerTest>(scene, scene.Today).Select(test => (Hour: WaterKnown.Hour(scene, test), Test: test))
            .Where(test => test.Hour <= morning).Select(test => test with { Hour = Math.Min(test.Hour, (24 * known.Today) - 1) }).ToList();
        if (tests.Count == 0)
        {
            return new ThirstLearned(1.0, 0);
        }

        var (sum, weights) = (0.0, 0.0);
        for (var i = 0; i < Candidates; i++)
        {
            var log = Reach * ((2.0 * i / (Candidates - 1)) - 1.0);
            var weight = Math.Exp(-0.5 * log * log / (Spread * Spread)) * Likelihood(scene, known, Math.Exp(log), tests);
            (sum, weights) = (sum + (weight * log), weights + weight);
        }

        return new ThirstLearned(Math.Exp(sum / weights), tests.Count);
    }

    private static double Likelihood(DailyScene scene, WaterKnown known, double factor, List<(int Hour, LogEntry.FingerTest Test)> tests)
    {
        var (bed, sky, likelihood) = (new WateredBed(scene.Ground), known.Sky.Thirstier(factor), 1.0);
        for (var hour = 0; hour <= tests[^1].Hour; hour++)
        {
            bed.Step(sky, hour, known.GivenMm[hour]);
            foreach (var (_, test) in tests.Where(t => t.Hour == hour))
            {
                likelihood *= (Lapse / 3.0) + ((1.0 - Lapse) * Chance(test.Felt, Math.Log(-Math.Min(-1.0e-4, bed.ZoneMPa))));
                likelihood *= test.WetTo is { } wet ? Lapse + ((1.0 - Lapse) * Math.Exp(-0.5 * Math.Pow((wet.Millimeters - WetMm(bed)) / WetWithinMm, 2.0))) : 1.0;
            }
        }

        return likelihood;
    }

    private static double Chance(FingerFelt felt, double logSuction)
    {
        var dry = Rising((logSuction - Math.Log(TooDryMPa)) / JudgedWithin);
        var soggy = Rising((Math.Log(SoggyMPa) - logSuction) / JudgedWithin);
        return felt switch
        {
            FingerFelt.TooDry => dry,
            FingerFelt.Soggy => soggy,
            _ => Math.Max(0.0, 1.0 - dry - soggy),
        };
    }

    private static double Rising(double x) => 1.0 / (1.0 + Math.Exp(-x));

    /// <summary>Depth to which the ground is moist from above, mm.</summary>
    private static double WetMm(WateredBed bed)
    {
        var wet = 0.0;
        for (var layer = 0; layer < BottomMm.Length && (layer == 0 || bed.LayerMPa(layer) >= WetMPa); layer++)
        {
            wet = bed.LayerMPa(layer) >= WetMPa ? BottomMm[layer] : wet;
        }

        return wet;
    }
}
