using Seedfall.Engine.Units;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Records;

namespace Seedfall.Planning.Field;

/// <summary>What the record of an application must keep to be believed at all. What a law asks for beyond that is the record book's to name.</summary>
internal static class ApplicationRules
{
    /// <summary>Ground beyond the upper end of the lawn's own range that edges, turns and overlap may add (common practice, no source read).</summary>
    internal const double AreaSlack = 1.25;

    private const double MostWindMph = 60.0;

    private static readonly TimeSpan Longest = TimeSpan.FromHours(24.0);

    /// <summary>Why the record cannot stand, each in one sentence.</summary>
    internal static IEnumerable<string> Problems(Lawn lawn, LogEntry.Applied entry) =>
    [
        .. string.IsNullOrWhiteSpace(entry.What.Product) ? ["product: its class and grade or strength are needed"] : Array.Empty<string>(),
        .. Amount(entry.What.Amount),
        .. Ground(lawn, entry),
        .. Time(entry),
        .. Actives(entry.What),
        .. entry.What.Carrier is { Liters: <= 0.0 } ? ["carrier: more than nothing is needed, or leave it out"] : Array.Empty<string>(),
        .. Weather("start", entry.What.AtStart),
        .. Weather("end", entry.What.AtEnd),
        .. Correction(entry),
    ];

    private static IEnumerable<string> Amount(ProductAmount amount)
    {
        if ((amount.Mass is null) == (amount.Volume is null))
        {
            yield return "amount: a weight or a volume of product is needed, and not both";
        }
        else if (amount is { Mass.Kilograms: <= 0.0 } or { Volume.Liters: <= 0.0 })
        {
            yield return "amount: more than nothing is needed";
        }
    }

    private static IEnumerable<string> Ground(Lawn lawn, LogEntry.Applied entry)
    {
        if (entry.What.Area.SquareMeters <= 0.0)
        {
            yield return "area: more than nothing is needed";
            yield break;
        }

        var mostM2 = AreaSlack * PatchGround.Summarize(lawn).Value!.Where(p => entry.PatchId is null || p.Id == entry.PatchId).Sum(p => p.AreaHigh.Value);
        if (mostM2 > 0.0 && entry.What.Area.SquareMeters > mostM2)
        {
            yield return FormattableString.Invariant($"area: {entry.What.Area.SquareFeet:#,##0} sq ft is more than this {(entry.PatchId is null ? "lawn" : "patch")} can have, {new Area(mostM2).SquareFeet:#,##0} sq ft with overlap; check the unit or the outline");
        }
    }

    private static IEnumerable<string> Time(LogEntry.Applied entry)
    {
        if (entry.What.Ended is { } ended && ended < entry.At)
        {
            yield return "ended: it cannot have ended before it began";
        }
        else if (entry.What.Ended - entry.At > Longest)
        {
            yield return "ended: more than 24 hours after it began; write one record for each day";
        }
    }

    private static IEnumerable<string> Actives(Application what)
    {
        if (what.Actives.Any(active => string.IsNullOrWhiteSpace(active.Name)))
        {
            yield return "active: every active ingredient or nutrient needs its name";
        }

        foreach (var twice in what.Actives.GroupBy(active => active.Name.Trim().ToUpperInvariant()).Where(same => same.Count() > 1).Select(same => same.First()))
        {
            yield return $"active: {twice.Name} stands there twice";
        }

        foreach (var active in what.Actives.Where(active => active.Amount.Kilograms < 0.0 || active.Amount > what.Amount.Mass))
        {
            yield return active.Amount.Kilograms < 0.0 ? $"active: {active.Name} cannot weigh less than nothing" : $"active: {active.Name} weighs more than the product it came in";
        }
    }

    private static IEnumerable<string> Weather(string when, FieldWeather? read)
    {
        if (read is null)
        {
            yield break;
        }

        if (read.Wind is { } wind && !Believable(wind) || read.Gust is { } gust && !Believable(gust))
        {
            yield return $"weather at {when}: wind and gusts from 0 to 60 mph (97 km/h) are needed; check the unit";
        }

        if (read.Gust < read.Wind)
        {
            yield return $"weather at {when}: a gust is stronger than the wind it comes in";
        }

        if (read.Air is { Celsius: < -20.0 or > 50.0 })
        {
            yield return $"weather at {when}: air from -4 to 122 degF (-20 to 50 degC) is needed; check the unit";
        }

        if (read.Humidity is { Value: <= 0.0 or > 1.0 })
        {
            yield return $"weather at {when}: humidity above 0 and up to 100 % is needed";
        }
    }

    private static bool Believable(Speed speed) => speed.MilesPerHour is >= 0.0 and <= MostWindMph;

    private static IEnumerable<string> Correction(LogEntry.Applied entry)
    {
        if (entry.What.Replaces == entry.Id)
        {
            yield return "replaces: a record cannot stand in its own place";
        }

        if (entry.What.Replaces is not null && string.IsNullOrWhiteSpace(entry.What.Why))
        {
            yield return "why: a correction needs its reason";
        }

        if (entry.What is { Replaces: null, Why: not null })
        {
            yield return "why: a reason is only given with the record it corrects";
        }
    }
}
