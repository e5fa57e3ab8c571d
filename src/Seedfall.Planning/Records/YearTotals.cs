using Seedfall.Engine.Units;
using Seedfall.Planning.Field;

namespace Seedfall.Planning.Records;

/// <summary>One active ingredient or nutrient over one calendar year.</summary>
/// <param name="Name">As first written.</param>
/// <param name="Year">Calendar year by the lawn's own clock.</param>
/// <param name="Amount">Its mass over all ground.</param>
/// <param name="Heaviest">The most that came together on any one piece of ground, per area: what a yearly maximum is held against.</param>
/// <param name="PatchId">The patch where that is; null where it is what the whole lawn got.</param>
/// <param name="Applications">How many applications brought it.</param>
public sealed record YearTotal(string Name, int Year, Mass Amount, MassPerArea Heaviest, string? PatchId, int Applications);

/// <summary>What the record of applications adds up to in a year.</summary>
public static class YearTotals
{
    /// <summary>Applications that count in a year: neither struck nor replaced by a later record, in order of when they happened.</summary>
    /// <param name="log">The field log of one lawn.</param>
    /// <param name="year">Calendar year by the lawn's own clock.</param>
    public static IReadOnlyList<LogEntry.Applied> Counting(FieldLog log, int year)
    {
        ArgumentNullException.ThrowIfNull(log);
        return [.. log.Standing.OfType<LogEntry.Applied>().Where(entry => entry.Day.Year == year)];
    }

    /// <summary>
    /// Totals of every active ingredient and nutrient of a year, by name. On each application <c>rate = mass / area</c>; the
    /// rates on the whole lawn and on one patch add up, <c>heaviest = whole + the patch with most</c>.
    /// </summary>
    /// <param name="log">The field log of one lawn; every application in it has an area above 0.</param>
    /// <param name="year">Calendar year by the lawn's own clock.</param>
    public static IReadOnlyList<YearTotal> Of(FieldLog log, int year) =>
    [
        .. Counting(log, year)
            .SelectMany(entry => entry.What.Actives.Select(active => (Entry: entry, Active: active)))
            .GroupBy(part => part.Active.Name.Trim(), StringComparer.OrdinalIgnoreCase)
            .OrderBy(group => group.Key, StringComparer.OrdinalIgnoreCase)
            .Select(group =>
            {
                var (heaviest, patch) = Heaviest(group.Select(part => (part.Entry.PatchId, part.Active.Amount.Kilograms / Ground(part.Entry).SquareMeters)));
                return new YearTotal(
                    group.Key,
                    year,
                    Mass.FromKilograms(group.Sum(part => part.Active.Amount.Kilograms)),
                    MassPerArea.FromKilogramsPerSquareMeter(heaviest),
                    patch,
                    group.Select(part => part.Entry.Id).Distinct().Count());
            }),
    ];

    /// <summary>The most that came together on one piece of ground, and the patch where; null for the whole lawn.</summary>
    /// <param name="rates">Patch and rate of each application; a null patch is the whole lawn.</param>
    internal static (double Rate, string? PatchId) Heaviest(IEnumerable<(string? PatchId, double Rate)> rates)
    {
        var byPatch = rates.GroupBy(r => r.PatchId).Select(g => (PatchId: g.Key, Rate: g.Sum(r => r.Rate))).ToList();
        var whole = byPatch.Where(p => p.PatchId is null).Sum(p => p.Rate);
        var most = byPatch.Where(p => p.PatchId is not null).OrderByDescending(p => p.Rate).ThenBy(p => p.PatchId, StringComparer.Ordinal).FirstOrDefault();
        return (whole + most.Rate, most.PatchId);
    }

    /// <summary>The ground an application went on; above 0.</summary>
    internal static Area Ground(LogEntry.Applied entry) => entry.What.Area > Area.Zero
        ? entry.What.Area
        : throw new ArgumentOutOfRangeException(nameof(entry), entry.What.Area, $"the application of {entry.Day:yyyy-MM-dd} needs an area above 0");
}
