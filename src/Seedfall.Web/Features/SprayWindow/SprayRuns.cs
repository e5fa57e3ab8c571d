using Seedfall.Planning.Field.SprayWeather;

namespace Seedfall.Web.Features.SprayWindow;

/// <summary>Hours on end with the same verdict for the same first reason.</summary>
/// <param name="Hours">At least one, each the hour after the one before.</param>
public sealed record SprayRun(IReadOnlyList<SprayHour> Hours)
{
    public SprayHour First => Hours[0];

    public SprayVerdict Verdict => First.Verdict;

    public DateTimeOffset End => Hours[^1].Hour.Start.AddHours(1.0);

    /// <summary>The hours of one day put together.</summary>
    public static IReadOnlyList<SprayRun> Of(IEnumerable<SprayHour> hours)
    {
        var runs = new List<List<SprayHour>>();
        foreach (var hour in hours)
        {
            if (runs.Count > 0 && runs[^1][^1] is var last && Key(last) == Key(hour) && last.Hour.Start.AddHours(1.0) == hour.Hour.Start)
            {
                runs[^1].Add(hour);
            }
            else
            {
                runs.Add([hour]);
            }
        }

        return [.. runs.Select(r => new SprayRun(r))];
    }

    /// <summary>Why it is no go; null where it is one.</summary>
    public static string? Key(SprayHour hour) => hour.Verdict == SprayVerdict.Go ? null : hour.Reasons[0].Id;
}
