using Seedfall.Weather.Merging;

namespace Seedfall.Weather.Csv;

/// <summary>
/// GHCN-Daily's flags beside a value: measurement, quality, source, time of observation. A quality flag rejects the value.
/// Meaning of the letters: NOAA, readme of GHCN-Daily, section III.
/// </summary>
internal sealed class GhcnFlags(FileDraft file)
{
    private const int EarliestMidnightObservation = 2000;

    /// <summary>GHCN station ids of the U.S. cooperative network begin so.</summary>
    private const string CooperativePrefix = "USC";

    private readonly Dictionary<int, int> _observationTimes = [];

    /// <summary>From flags as <c>M,Q,S,HHMM</c>, the last parts optional.</summary>
    internal bool Accept(ReadOnlySpan<byte> attributes, Element element, int line)
    {
        Span<Range> parts = stackalloc Range[5];
        var count = 0;
        for (var (i, start) = (0, 0); i <= attributes.Length && count < parts.Length; i++)
        {
            if (i == attributes.Length || attributes[i] == ',')
            {
                parts[count++] = start..i;
                start = i + 1;
            }
        }

        var measurement = count > 0 ? First(attributes[parts[0]]) : ' ';
        var quality = count > 1 ? First(attributes[parts[1]]) : ' ';
        return Accept(measurement, quality, count > 3 ? attributes[parts[3]] : default, element, line);
    }

    /// <summary>True where the value may be used.</summary>
    internal bool Accept(char measurement, char quality, ReadOnlySpan<byte> time, Element element, int line)
    {
        if (quality != ' ')
        {
            file.Tally($"{Elements.Name(element)} rejected by quality flag {quality}", FormattableString.Invariant($"line {line}"));
            return false;
        }

        if (measurement == 'T')
        {
            file.Tally("A trace of rain taken as 0", FormattableString.Invariant($"line {line}"));
        }
        else if (measurement == 'P')
        {
            file.Tally($"{Elements.Name(element)} missing but presumed zero by the agency, taken as 0", FormattableString.Invariant($"line {line}"));
        }

        if (element is Element.RainMm or Element.TmaxC && Input.FieldText.TryInt(time, out var hhmm))
        {
            _observationTimes[hhmm] = _observationTimes.GetValueOrDefault(hhmm) + 1;
        }

        return true;
    }

    /// <summary>Says what the observer's hour means for the days.</summary>
    internal void Note()
    {
        var total = _observationTimes.Values.Sum();
        if (total == 0 && file.Station.Id?.StartsWith(CooperativePrefix, StringComparison.OrdinalIgnoreCase) == true)
        {
            file.Notes.Add("A cooperative station whose hour of observation is not in the file; often 07:00, when rain and highest temperature may belong to the day before.");
        }

        var early = _observationTimes.Where(t => t.Key is > 0 and < EarliestMidnightObservation).OrderByDescending(t => t.Value).ToList();
        if (total == 0 || early.Count == 0)
        {
            return;
        }

        var share = 100.0 * early.Sum(t => t.Value) / total;
        file.Notes.Add(FormattableString.Invariant(
            $"Read by an observer at {early[0].Key:0000} and such hours on {share:0} % of the days: their rain and highest temperature may belong to the day before."));
    }

    private static char First(ReadOnlySpan<byte> part) => part.IsEmpty ? ' ' : (char)part[0];
}
