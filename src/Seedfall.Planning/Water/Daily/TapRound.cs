namespace Seedfall.Planning.Water;

/// <summary>Runs that follow each other without a pause: what a timer starts once.</summary>
/// <param name="Start">When the first begins.</param>
/// <param name="Runs">In order of time.</param>
public sealed record TapRound(TimeOnly Start, IReadOnlyList<TapRun> Runs)
{
    /// <summary>A day's runs as rounds.</summary>
    /// <param name="runs">In order of time.</param>
    public static IReadOnlyList<TapRound> Of(IReadOnlyList<TapRun> runs)
    {
        ArgumentNullException.ThrowIfNull(runs);
        var rounds = new List<List<TapRun>>();
        foreach (var run in runs)
        {
            if (rounds.Count == 0 || rounds[^1].Any(r => r.SetName == run.SetName) || rounds[^1][^1].Start.AddMinutes(rounds[^1][^1].AllMinutes) != run.Start)
            {
                rounds.Add([]);
            }

            rounds[^1].Add(run);
        }

        return [.. rounds.Select(round => new TapRound(round[0].Start, round))];
    }
}
