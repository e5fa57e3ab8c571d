using Seedfall.Engine.Units;

namespace Seedfall.Planning.Calibration.Spreader;

/// <summary>The run that is to come.</summary>
/// <param name="Material">What is put in.</param>
/// <param name="What">As the adviser calls it.</param>
/// <param name="Day">The day: runs of one day with the same stuff tell most about each other.</param>
public sealed record RunAhead(SpreadMaterial Material, string What, DateOnly Day)
{
    /// <summary>Distance between passes; the spreader's usual one where null.</summary>
    public Length? Swath { get; init; }

    /// <summary>Walking speed; the spreader's usual one where null.</summary>
    public Speed? Walk { get; init; }
}

/// <summary>
/// Flow of one spreader against its opening, from the first weighed run on.
/// <c>ln(flow) = a + b ln((p - d)/(1 - d)) + m + l + e</c>: p place on the scale (0 to 1), d where the gate begins to flow, b exponent,
/// m shift of the class of material, l shift of the lot and day, e run to run. Flow is rate x swath x speed. For each d of a grid the rest
/// is linear with normal beliefs and solved exactly; each d is weighed by how well it foresaw the runs. Every number has a prior
/// (<see cref="FlowPriors"/>), so it answers before the first run, widely.
/// </summary>
public sealed class FlowFit
{
    private const int Level = 0;
    private const int Slope = 1;
    private const int FirstMaterial = 2;

    /// <summary>Ln of how many times less likely than the likeliest a part is that is left out.</summary>
    private const double Unlikely = 16.0;

    private static readonly int Materials = Enum.GetValues<SpreadMaterial>().Length;

    private readonly KeptSpreader _spreader;
    private readonly RunAhead _ahead;
    private readonly List<(DateOnly, string)> _lots;
    private readonly List<(double Dead, double Weight, GaussianBelief Belief)> _parts;

    private FlowFit(KeptSpreader spreader, RunAhead ahead, List<(DateOnly, string)> lots, List<(double, double, GaussianBelief)> parts) =>
        (_spreader, _ahead, _lots, _parts) = (spreader, ahead, lots, parts);

    /// <summary>The fit to all runs that hold, for one run to come.</summary>
    public static FlowFit Of(KeptSpreader spreader, RunAhead ahead)
    {
        ArgumentNullException.ThrowIfNull(spreader);
        ArgumentNullException.ThrowIfNull(ahead);
        var runs = spreader.Runs;
        var lots = runs.Select(r => r.Lot).Append(LotOf(ahead)).Distinct().ToList();
        var parts = new List<(double Dead, double Log, GaussianBelief Belief)>();
        for (var k = 0; k < FlowPriors.DeadPlaces; k++)
        {
            var dead = FlowPriors.LeastDeadPlace + k * (FlowPriors.MostDeadPlace - FlowPriors.LeastDeadPlace) / (FlowPriors.DeadPlaces - 1);
            var part = new DeadPlacePart(dead, Prior(spreader, lots.Count));
            foreach (var fall in spreader.FirstFalls)
            {
                part.Take(spreader.Scale.Place(fall.Opening), spreader.Scale.Step / (spreader.Scale.Greatest - spreader.Scale.Least));
            }

            foreach (var run in runs)
            {
                part.Take(spreader, run, Sum(part.Dead, spreader.Scale.Place(run.Opening), run.Material, lots.IndexOf(run.Lot)));
            }

            parts.Add((dead, part.Log, part.Belief));
        }

        var most = parts.Max(p => p.Log);
        var total = parts.Where(p => p.Log > most - Unlikely).Sum(p => Math.Exp(p.Log - most));
        return new(spreader, ahead, lots, [.. parts.Where(p => p.Log > most - Unlikely).Select(p => (p.Dead, Math.Exp(p.Log - most) / total, p.Belief))]);
    }

    /// <summary>What the run to come will put on at an opening of the scale.</summary>
    public FlowForecast At(double opening)
    {
        var place = _spreader.Scale.Place(opening);
        var width = Math.Log(_spreader.SwathM(_ahead.Swath) * _spreader.WalkMs(_ahead.Walk));
        var lot = _lots.IndexOf(LotOf(_ahead));
        var (flowing, nothing) = (new List<(double, double, double)>(), 0.0);
        foreach (var (dead, weight, belief) in _parts)
        {
            if (Sum(dead, place, _ahead.Material, lot) is { } sum)
            {
                var (mean, variance) = belief.Of(sum);
                flowing.Add((weight, mean - width, Math.Sqrt(variance + FlowPriors.RunSd * FlowPriors.RunSd)));
            }
            else
            {
                nothing += weight;
            }
        }

        return new(flowing, nothing);
    }

    /// <summary>Level, exponent and shifts before any run, in this order: level [ln kg/s], exponent, materials, lots.</summary>
    private static List<(double, double)> Prior(KeptSpreader spreader, int lots)
    {
        var fullKgS = FlowPriors.FullRate.KilogramsPerSquareMeter * FlowPriors.UsualSwath(spreader.Kind).Meters * FlowPriors.UsualWalk.MetersPerSecond;
        return
        [
            (Math.Log(fullKgS), FlowPriors.FullRateSd),
            (FlowPriors.Exponent, FlowPriors.ExponentSd),
            .. Enumerable.Repeat((0.0, FlowPriors.MaterialSd), Materials),
            .. Enumerable.Repeat((0.0, FlowPriors.LotSd), lots),
        ];
    }

    /// <summary>Null where the gate is shut at this place.</summary>
    private static (int, double)[]? Sum(double dead, double place, SpreadMaterial material, int lot) => place > dead
        ? [(Level, 1.0), (Slope, Math.Log((place - dead) / (1.0 - dead))), (FirstMaterial + (int)material, 1.0), (FirstMaterial + Materials + lot, 1.0)]
        : null;

    private static (DateOnly, string) LotOf(RunAhead ahead) => (ahead.Day, ahead.What.ToUpperInvariant());
}
