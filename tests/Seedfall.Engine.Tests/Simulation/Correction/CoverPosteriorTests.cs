using CsCheck;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Correction;
using Seedfall.Engine.Simulation.Cover;
using Seedfall.Engine.Simulation.Ensemble;

namespace Seedfall.Engine.Tests.Simulation.Correction;

/// <summary>Learning cover from what was seen, against lawns whose truth is known because it was made up.</summary>
public sealed class CoverPosteriorTests
{
    private const int Days = 80;

    private static readonly CoverTraits Bunch = new(0.075, Rhizomes: false);

    private static readonly CoverMembers Ensemble = Members();

    [Fact]
    public void NothingSeenLeavesTheEnsembleAsItIs()
    {
        var plain = CoverPosterior.Of(Ensemble, []);
        Assert.Empty(plain.Checks);
        Assert.Equal(Days, plain.Days);
    }

    [Fact]
    public void TwoOrThreeCoversBringTheForecastNearerInMostLawns()
    {
        var random = new SplitMix64(11);
        var (before, after, nearer) = (0.0, 0.0, 0);
        const int Lawns = 200;
        for (var lawn = 0; lawn < Lawns; lawn++)
        {
            var truth = Grow(0.45 + (0.05 * random.NextNormal()), Math.Exp(0.3 * random.NextNormal()), Math.Exp(0.4 * random.NextNormal()));
            var seen = new[] { 21, 28, 35 }.Select(day => new CoverObservation(day, Math.Clamp(truth[day] + (0.04 * random.NextNormal()), 0.0, 1.0), 0.04)).ToList();
            var (plain, taught) = (CoverPosterior.Of(Ensemble, []).Quantile(56, 0.5), CoverPosterior.Of(Ensemble, seen).Quantile(56, 0.5));
            var (was, now) = (Math.Abs(plain - truth[56]), Math.Abs(taught - truth[56]));
            (before, after, nearer) = (before + was, after + now, nearer + (now < was ? 1 : 0));
        }

        Assert.True(after < 0.6 * before, $"{after / Lawns:F3} after, {before / Lawns:F3} before");
        Assert.True(nearer > 0.7 * Lawns, $"{nearer} of {Lawns}");
    }

    [Fact]
    public void TheBandHoldsAboutEightLawnsInTen()
    {
        var random = new SplitMix64(12);
        var held = 0;
        const int Lawns = 300;
        for (var lawn = 0; lawn < Lawns; lawn++)
        {
            var truth = Grow(0.45 + (0.05 * random.NextNormal()), Math.Exp(0.3 * random.NextNormal()), Math.Exp(0.4 * random.NextNormal()));
            var seen = new[] { 21, 35 }.Select(day => new CoverObservation(day, Math.Clamp(truth[day] + (0.06 * random.NextNormal()), 0.0, 1.0), 0.04)).ToList();
            var taught = CoverPosterior.Of(Ensemble, seen);
            held += truth[56] >= taught.Quantile(56, 0.1) && truth[56] <= taught.Quantile(56, 0.9) ? 1 : 0;
        }

        Assert.InRange((double)held / Lawns, 0.70, 0.95);
    }

    [Fact]
    public void OneWildCoverAmongThreeMovesTheForecastLittle()
    {
        var truth = Grow(0.45, 1.0, 1.0);
        List<CoverObservation> honest = [.. new[] { 21, 28, 35 }.Select(day => new CoverObservation(day, truth[day], 0.04))];
        var calm = CoverPosterior.Of(Ensemble, honest).Quantile(56, 0.5);
        foreach (var wild in new[] { 0.0, 1.0 })
        {
            var shaken = CoverPosterior.Of(Ensemble, [.. honest, new CoverObservation(31, wild, 0.04)]).Quantile(56, 0.5);
            Assert.InRange(shaken - calm, -0.05, 0.05);
        }
    }

    [Fact]
    public void WeightsSumToOneAndNeverCollapse() =>
        Gen.Double[-500.0, 0.0].Array[10, 60].Sample(logs =>
        {
            var prior = Enumerable.Repeat(1.0 / logs.Length, logs.Length).ToArray();
            var weights = TemperedWeights.Of(prior, logs);
            Assert.Equal(1.0, weights.Sum(), 9);
            Assert.True(TemperedWeights.Effective(weights) >= Math.Min(TemperedWeights.LeastEffective, 0.9 * logs.Length) - 1e-6);
            var best = Array.IndexOf(logs, logs.Max());
            Assert.All(weights, w => Assert.True(w <= weights[best] + 1e-12));
        });

    [Fact]
    public void WeightsThatNeedNoTemperingAreBayes()
    {
        // Two thirds prior and a likelihood ratio of one half: computed by hand, not outside evidence.
        double[] prior = [.. Enumerable.Repeat(2.0 / 60.0, 20), .. Enumerable.Repeat(1.0 / 60.0, 20)];
        double[] logs = [.. Enumerable.Repeat(Math.Log(0.5), 20), .. Enumerable.Repeat(0.0, 20)];
        Assert.Equal(0.5, TemperedWeights.Of(prior, logs).Take(20).Sum(), 12);
    }

    /// <summary>Every variant of one made-up season.</summary>
    private static CoverMembers Members()
    {
        var all = CoverVariants.Wide.All();
        return new CoverMembers([.. all.Select(v => Grow(0.45 + v.StartShift, v.Vigor, v.Survival))], [.. all.Select(v => v.Weight)]);
    }

    private static double[] Grow(double start, double vigor, double survival)
    {
        var growth = new CoverGrowth(Math.Clamp(start, 0.0, 1.0), Bunch, Bunch);
        var cover = new double[Days];
        for (var day = 0; day < Days; day++)
        {
            growth.Day(19.0 - (0.12 * day), day is >= 7 and < 14 ? survival * 700.0 : 0.0, 0.0, new GrowthConditions(1.0, 1.0, 1.0), vigor);
            cover[day] = growth.Total;
        }

        return cover;
    }
}
