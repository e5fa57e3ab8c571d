using Seedfall.Engine.Numerics;
using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader.Trial;

/// <summary>One spreader with one job, as drawn for a trial.</summary>
/// <param name="Made">The spreader.</param>
/// <param name="Target">Rate wanted in all.</param>
/// <param name="Ground">Ground it goes on.</param>
/// <param name="Shift">How the material of an earlier job flows beside this one, of ln(rate).</param>
/// <param name="Seed">Decides the noise.</param>
internal sealed record TrialDraw(MadeUpSpreader Made, MassPerArea Target, Area Ground, double Shift, ulong Seed)
{
    /// <summary>A scale that has no opening this near to half the target is not for the job, whoever sets it.</summary>
    private const double Suits = 0.10;

    internal static TrialDraw Of(FlowFamily family, SplitMix64 chance)
    {
        while (true)
        {
            var draw = new TrialDraw(
                MadeUpSpreader.Draw(family, chance),
                MassPerArea.FromPoundsPerThousandSquareFeet(MadeUpSpreader.LogUniform(2.0, 8.0, chance)),
                Area.FromSquareFeet(MadeUpSpreader.LogUniform(1000.0, 8000.0, chance)),
                FlowPriors.MaterialSd * chance.NextNormal(),
                chance.NextUInt64());
            if (draw.Nearest <= Suits)
            {
                return draw;
            }
        }
    }

    private double Nearest => Enumerable.Range(1, Made.Steps).Min(o => Math.Abs(Made.RateKgM2(o / (double)Made.Steps) / (0.5 * Target.KilogramsPerSquareMeter) - 1.0));
}
