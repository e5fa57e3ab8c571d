using Seedfall.Engine.Simulation.Regression;
using Seedfall.Engine.Validation;

namespace Seedfall.Fit;

/// <summary>Ridge regression fitted without each station in turn and scored on it.</summary>
internal static class LeaveOneOut
{
    internal static (LinearModel All, IReadOnlyList<ErrorTally> PerStation) Ridge(IReadOnlyList<FeatureTable> tables, int features, double ridge)
    {
        var all = new RidgeFit(features);
        foreach (var table in tables)
        {
            all.Add(table.Sums);
        }

        var tallies = new List<ErrorTally>();
        foreach (var table in tables)
        {
            var others = new RidgeFit(features);
            others.Add(all);
            others.Add(table.Sums, -1.0);
            var model = others.Solve(ridge);
            var tally = new ErrorTally();
            foreach (var row in table.Rows)
            {
                tally.Add(model.At(row.Features), row.SoilC);
            }

            tallies.Add(tally);
        }

        return (all.Solve(ridge), tallies);
    }

    internal static ErrorSummary Pooled(IEnumerable<ErrorTally> tallies)
    {
        var pooled = new ErrorTally();
        foreach (var tally in tallies)
        {
            pooled.Add(tally);
        }

        return pooled.Summary()!;
    }
}
