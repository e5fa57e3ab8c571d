using Seedfall.Engine.Numerics;
using Seedfall.Planning.Calibration.Spreader;
using static Seedfall.Planning.Tests.Calibration.Spreaders;

namespace Seedfall.Planning.Tests.Calibration;

/// <summary>The fit beside the same model summed by brute force over a fine grid of all its numbers.</summary>
public sealed class FlowFitTests
{
    private static readonly double LevelSd = Math.Sqrt(FlowPriors.FullRateSd * FlowPriors.FullRateSd + FlowPriors.MaterialSd * FlowPriors.MaterialSd + FlowPriors.LotSd * FlowPriors.LotSd);

    [Theory]
    [InlineData(new[] { 2.0 }, new[] { 0.8 })]
    [InlineData(new[] { 2.0, 3.5 }, new[] { 0.8, 2.9 })]
    [InlineData(new[] { 4.0, 3.0, 6.0, 5.0 }, new[] { 2.0, 1.1, 4.6, 3.1 })]
    public void Chances_are_those_of_the_posterior_summed_over_a_grid(double[] openings, double[] rates)
    {
        var spreader = With([.. openings.Zip(rates).Select((r, i) => Run(i + 1, r.First, r.Second))]);
        var fit = FlowFit.Of(spreader, Ahead());
        (double Opening, double Rate)[] asked = [.. ((double[])[1.5, 3.0, 7.0]).SelectMany(opening => ((double[])[0.3, 1.0, 3.0, 9.0]).Select(rate => (opening, rate)))];
        foreach (var (summed, (opening, rate)) in Summed(spreader, asked).Zip(asked))
        {
            Assert.Equal(summed, fit.At(opening).ChanceUpTo(Rate(rate)), 0.003);
        }
    }

    [Fact]
    public void With_the_dead_place_known_the_fit_is_the_closed_form_of_a_line()
    {
        // Many notes of the first grains leave one dead place; the rest is a regression with normal priors, solved here by its normal equations.
        var falls = Enumerable.Range(100, 400).Select(i => new SpreaderEntry.FirstFall(1.25, SpreadMaterial.CoarseSeed) { Id = new Guid(i, 0, 0, new byte[8]), At = Morning });
        SpreaderEntry.Run[] runs = [Run(1, 3.0, 1.0), Run(2, 5.0, 3.4), Run(3, 7.0, 6.9)];
        var forecast = FlowFit.Of(With([.. falls, .. runs]), Ahead()).At(6.0);
        var dead = Enumerable.Range(0, FlowPriors.DeadPlaces).Select(k => Dead(k)).MinBy(d => Math.Abs(d - (0.125 - FlowPriors.FirstFallLate)));
        var (mean, sd) = Line(runs, dead, 6.0);
        Assert.Equal(Math.Exp(mean), forecast.Median.KilogramsPerSquareMeter, Math.Exp(mean) * 1.0e-6);
        Assert.Equal(Math.Exp(mean + 1.6448536 * sd), forecast.High.KilogramsPerSquareMeter, Math.Exp(mean) * 1.0e-5);
    }

    [Fact]
    public void A_run_in_which_nothing_fell_moves_the_belief_as_the_grid_does()
    {
        var spreader = With(Run(1, 1.0, 0.0), Run(2, 3.0, 0.9));
        var fit = FlowFit.Of(spreader, Ahead());
        (double Opening, double Rate)[] asked = [(1.5, 0.2), (2.0, 0.3), (5.0, 3.0), (5.0, 6.0)];
        foreach (var (summed, (opening, rate)) in Summed(spreader, asked).Zip(asked))
        {
            // A cut-off normal curve is taken as the normal one with its mean and variance: near, not the same.
            Assert.Equal(summed, fit.At(opening).ChanceUpTo(Rate(rate)), 0.03);
        }
    }

    [Fact]
    public void Order_of_the_entries_does_not_matter_and_a_struck_one_does_not_count()
    {
        SpreaderEntry[] entries = [Run(1, 2.0, 0.8), Run(2, 4.0, 3.0), Run(3, 9.0, 900.0), new SpreaderEntry.Struck(new Guid(3, 0, 0, new byte[8]), "misread") { Id = new Guid(4, 0, 0, new byte[8]), At = Morning }];
        var there = FlowFit.Of(With(entries), Ahead()).At(5.0).Median.KilogramsPerSquareMeter;
        Assert.Equal(there, FlowFit.Of(With([.. entries.Reverse()]), Ahead()).At(5.0).Median.KilogramsPerSquareMeter, 1.0e-12);
        Assert.Equal(there, FlowFit.Of(With(entries[0], entries[1], entries[1]), Ahead()).At(5.0).Median.KilogramsPerSquareMeter, 1.0e-12);
    }

    [Fact]
    public void The_same_day_tells_more_than_another_day_and_like_seed_more_than_unlike()
    {
        double Width(SpreaderEntry.Run run)
        {
            var forecast = FlowFit.Of(With(run), Ahead()).At(4.0);
            return Math.Log(forecast.High / forecast.Low);
        }

        var (sameDay, otherDay, other) = (Width(Run(1, 4.0, 2.0)), Width(Run(1, 4.0, 2.0, day: -7)), Width(Run(1, 4.0, 2.0, SpreadMaterial.Granules, day: -7)));
        Assert.True(sameDay < otherDay, $"{sameDay} < {otherDay}");
        Assert.True(otherDay < other, $"{otherDay} < {other}");
        var never = FlowFit.Of(With(), Ahead()).At(4.0);
        Assert.True(other < Math.Log(never.High / never.Quantile(0.5)) * 2.0);
    }

    private static double Dead(int k) => FlowPriors.LeastDeadPlace + k * (FlowPriors.MostDeadPlace - FlowPriors.LeastDeadPlace) / (FlowPriors.DeadPlaces - 1);

    private static double Noise(SpreaderEntry.Run run) => FlowPriors.RunSd * FlowPriors.RunSd + Math.Pow(FlowPriors.UsualWeighing.Kilograms / run.Used.Kilograms, 2.0);

    /// <summary>P(rate up to a limit) at each opening asked for, all of level, exponent and dead place summed over a grid. Level stands for level, class and lot together.</summary>
    private static double[] Summed(KeptSpreader spreader, (double Opening, double Rate)[] asked)
    {
        var (all, below) = (0.0, new double[asked.Length]);
        double[] limits = [.. asked.Select(a => Math.Log(Rate(a.Rate).KilogramsPerSquareMeter))];
        for (var k = 0; k < FlowPriors.DeadPlaces; k++)
        {
            var dead = Dead(k);
            double[] ahead = [.. asked.Select(a => LogOpen(a.Opening, dead))];
            foreach (var (level, slope, weight) in Grid(spreader, dead))
            {
                all += weight;
                for (var i = 0; i < asked.Length; i++)
                {
                    below[i] += double.IsNaN(ahead[i]) ? weight : weight * NormalDistribution.Cumulative((limits[i] - level - (slope * ahead[i])) / FlowPriors.RunSd);
                }
            }
        }

        return [.. below.Select(b => b / all)];
    }

    /// <summary>Level and exponent on a grid, each with prior times likelihood of the runs where the gate begins to flow at a place.</summary>
    private static IEnumerable<(double Level, double Slope, double Weight)> Grid(KeptSpreader spreader, double dead)
    {
        const int Levels = 301;
        const int Slopes = 121;
        var ofDead = Math.Exp(-0.5 * Math.Pow((dead - FlowPriors.DeadPlace) / FlowPriors.DeadPlaceSd, 2.0));
        var prior = Math.Log(FlowPriors.FullRate.KilogramsPerSquareMeter);
        (SpreaderEntry.Run Run, double LogOpen)[] runs = [.. spreader.Runs.Select(run => (run, LogOpen(run.Opening, dead)))];
        for (var i = 0; i < Levels; i++)
        {
            var z = -5.0 + (10.0 * i / (Levels - 1));
            for (var j = 0; j < Slopes; j++)
            {
                var y = -4.5 + (9.0 * j / (Slopes - 1));
                var (level, slope) = (prior + (z * LevelSd), FlowPriors.Exponent + (y * FlowPriors.ExponentSd));
                yield return (level, slope, runs.Aggregate(ofDead * Math.Exp(-0.5 * ((z * z) + (y * y))), (weight, r) => weight * Likelihood(r.Run, level + (slope * r.LogOpen))));
            }
        }
    }

    /// <summary>How likely a run is where a log rate is foreseen; NaN where the gate should still be shut.</summary>
    private static double Likelihood(SpreaderEntry.Run run, double foreseen)
    {
        if (run.Used.Kilograms <= 0.0)
        {
            return double.IsNaN(foreseen) ? 1.0 : NormalDistribution.Cumulative((Math.Log(FlowPriors.Trace * FlowPriors.FullRate.KilogramsPerSquareMeter) - foreseen) / FlowPriors.RunSd);
        }

        return double.IsNaN(foreseen) ? Math.Exp(-20.0) : Math.Exp(-0.5 * Math.Pow(Math.Log(run.Rate.KilogramsPerSquareMeter) - foreseen, 2.0) / Noise(run)) / Math.Sqrt(Noise(run) * 2.0 * Math.PI);
    }

    /// <summary>ln of the share of the gate that flows; NaN where it is shut.</summary>
    private static double LogOpen(double opening, double dead) => opening / 10.0 > dead ? Math.Log(((opening / 10.0) - dead) / (1.0 - dead)) : double.NaN;

    /// <summary>Predictive mean and standard deviation by the normal equations of two unknowns.</summary>
    private static (double Mean, double Sd) Line(SpreaderEntry.Run[] runs, double dead, double opening)
    {
        double G(double o) => Math.Log((o / 10.0 - dead) / (1.0 - dead));
        var (a, b, c) = (1.0 / (LevelSd * LevelSd), 0.0, 1.0 / (FlowPriors.ExponentSd * FlowPriors.ExponentSd));
        var (u, v) = (a * Math.Log(FlowPriors.FullRate.KilogramsPerSquareMeter), c * FlowPriors.Exponent);
        foreach (var run in runs)
        {
            var (w, g, y) = (1.0 / Noise(run), G(run.Opening), Math.Log(run.Rate.KilogramsPerSquareMeter));
            (a, b, c, u, v) = (a + w, b + w * g, c + w * g * g, u + w * y, v + w * g * y);
        }

        var (det, h) = (a * c - b * b, G(opening));
        return (((c * u - b * v) + h * (a * v - b * u)) / det, Math.Sqrt((c - 2.0 * b * h + a * h * h) / det + FlowPriors.RunSd * FlowPriors.RunSd));
    }
}
