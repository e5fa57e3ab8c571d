using Seedfall.Engine.Validation;

namespace Seedfall.Fit;

/// <summary>Errors of crossing dates beside the station's own usual date.</summary>
internal sealed record CrossingErrors(double ThresholdF, ErrorSummary Product, ErrorSummary? Climatology)
{
    private const int LeastOtherSeasons = 3;

    internal static IEnumerable<CrossingErrors> Of(IReadOnlyList<StationOutcome> outcomes)
    {
        foreach (var threshold in StationOutcome.ThresholdsF)
        {
            var (product, usual) = (new ErrorTally(), new ErrorTally());
            foreach (var outcome in outcomes)
            {
                var seasons = outcome.Crossings[threshold];
                foreach (var season in seasons)
                {
                    product.Add(season.PredictedDay, season.ObservedDay);
                    var others = seasons.Where(s => s.Year != season.Year).Select(s => (double)s.ObservedDay).ToList();
                    if (others.Count >= LeastOtherSeasons)
                    {
                        usual.Add(others.Average(), season.ObservedDay);
                    }
                }
            }

            if (product.Summary() is { } errors)
            {
                yield return new CrossingErrors(threshold, errors, usual.Summary());
            }
        }
    }
}
