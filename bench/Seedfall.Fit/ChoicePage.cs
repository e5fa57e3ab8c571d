using System.Globalization;
using System.Text;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation.Choice;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Catalog;
using Seedfall.Fit.Plots;
using Seedfall.Planning.Timing;

namespace Seedfall.Fit;

/// <summary>Writes the section on the choice of the seed-down day, with the shipped constants, and its pictures.</summary>
internal static class ChoicePage
{
    internal const string Heading = "## Choice of the seed-down day";
    private const string Pictured = "IL_Champaign_9_SW";

    internal static void Write(string file, string pictures, IReadOnlyList<WeatherHistory> histories)
    {
        var scenes = ChoiceScenes.All(Trade.Tables);
        var reports = ChoiceValidation.Score(histories, scenes, ChoiceScenes.UsualDay, SoilHeatConstants.Shipped);
        foreach (var report in reports)
        {
            ChoicePlots.ByStation(Path.Combine(pictures, $"choice-{report.Scene}.svg"), report);
        }

        if (histories.FirstOrDefault(h => h.StationName == Pictured) is { } history
            && ChoiceStation.Of(history, ChoiceScenes.UsualDay(history.Station!.LatitudeDeg), SoilHeatConstants.Shipped, []) is { } station)
        {
            (ChoiceScene Scene, string Name, string Color)[] drawn = [(scenes[0], "watered three times a day", Sheet.Water), (scenes[^1], "rain alone", Sheet.Soil)];
            ChoicePlots.Curves(
                Path.Combine(pictures, "choice-curve.svg"), station.Name, [.. drawn.Select(d => (d.Name, d.Color, station.Stands(d.Scene), station.Try(d.Scene)))], ChoiceStation.FirstDay(2001, history.Station!.LatitudeDeg));
        }

        PageSection.Write(file, Heading, Body(reports), ValidationPage.Heading);
    }

    private static string Body(IReadOnlyList<ChoiceReport> reports)
    {
        var scored = reports[0].Stations.Where(s => s.Seasons > 0).ToList();
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            Who chooses the day well? {scored.Sum(s => s.Seasons)} past autumns at {scored.Count} stations ({scored.Min(s => s.Seasons)} to {scored.Max(s => s.Seasons)} each), simulated hour by hour; a share is of autumns with an established
            stand (400 plants per sq ft with three leaves before 28 degF). Everything here is judged by the simulator that also chose: it compares dates, it
            does not check the simulator against lawns.

            Scene: open level loam, one fifth living turf, straw on half of the ground; Kentucky bluegrass, perennial ryegrass and turf-type tall fescue, 500 live seeds per sq ft
            each, raked in. Seed may go down from 1 August to 15 November.

            - *Seedfall*: the date the station's other seasons choose; of the season itself it knows nothing (but the usual year that soil starts from holds all years, and
              the soil temperature's constants were fitted on these stations). It is thus also the best fixed date of the other years.
            - *soil 70*: the day after this season's own computed soil has been at or below 70 degF (5-day mean) for three days: with its known delay of three days.
            - *calendar*: the middle of the usual window of the latitude. *hindsight*: each season's own best date.
            - Watering, where there is any, runs from 1 August, so a late date finds ground watered before it. A best date of 1 August means that an earlier one might do
              as well. Under rain alone seed waits in the ground at no cost but drying: birds, washouts and weeds are not charged, which flatters early dates there.
            - *regret*: autumns lost beside hindsight. *lead*: Seedfall's share less the rule's, paired by season, with its standard error (seasons of a station go together).

            Rerun: `./dev validate --choice` (this section and its pictures), or `seedfall validate choice DIR --json`.

            ### All stations


            """);
        page.Append("| watering | rule | stands | regret | lead of Seedfall | plants, of hindsight's | middle day |\n| --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var report in reports)
        {
            foreach (var (rule, r) in report.Pooled!.Rules)
            {
                page.Append(CultureInfo.InvariantCulture, $"| {report.Scene} | {Name(rule)} | {Share(r.Success)} ± {Share(r.StandardError)} | {Share(r.Regret)} | {Lead(rule, r)} | {Share(r.PlantsOfHindsight)} | {Day(r.MiddleDay)} |\n");
            }
        }

        page.Append(CultureInfo.InvariantCulture, $"\n{string.Join("; ", reports.Select(r => $"*{r.Scene}*: {r.Text}"))}.\n\n");
        foreach (var report in reports)
        {
            Stations(page, report);
        }

        page.Append("""
            ![Chance of a stand by seed-down day at one station, watered and by rain alone](validation/choice-curve.svg)

            The curve is the share of past seasons with a stand; the ticks under it are each season's best day.
            """);
        return page.ToString();
    }

    private static void Stations(StringBuilder page, ChoiceReport report)
    {
        page.Append(CultureInfo.InvariantCulture, $"### {Upper(report.Text)}\n\n{Verdict(report)}\n\n| station | seasons | Seedfall | soil 70 | calendar | hindsight | Seedfall's middle day |\n| --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var score in report.Stations.Where(s => s.Seasons > 0))
        {
            var r = score.Rules;
            page.Append(CultureInfo.InvariantCulture, $"| {score.Station} | {score.Seasons} | {Share(r[SeedDownRules.Seedfall].Success)} | {Share(r[SeedDownRules.Soil70].Success)} | {Share(r[SeedDownRules.Calendar].Success)} | {Share(r[SeedDownRules.Hindsight].Success)} | {Day(r[SeedDownRules.Seedfall].MiddleDay)} |\n");
        }

        foreach (var score in report.Stations.Where(s => s.Notes.Count > 0))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n{score.Station}: {string.Join("; ", score.Notes)}.\n");
        }

        page.Append(CultureInfo.InvariantCulture, $"\n![{report.Text}: stands by station and rule](validation/choice-{report.Scene}.svg)\n\n");
    }

    /// <summary>Where Seedfall's date wins and where it does not.</summary>
    private static string Verdict(ChoiceReport report)
    {
        string Against(string rule)
        {
            var leads = report.Stations.Where(s => s.Seasons > 0).Select(s => (s.Station, s.Rules[rule].Lead)).ToList();
            var lost = leads.Where(l => l.Lead < -1e-9).Select(l => l.Station).ToList();
            return $"Against {Name(rule)} Seedfall's date is better at {leads.Count(l => l.Lead > 1e-9)} stations, as good at {leads.Count(l => Math.Abs(l.Lead) <= 1e-9)}, worse at {lost.Count}{(lost.Count > 0 ? $" ({string.Join(", ", lost)})" : "")}.";
        }

        var never = report.Stations.Where(s => s.Seasons > 0 && s.Rules[SeedDownRules.Hindsight].Success <= 0.0).Select(s => s.Station).ToList();
        return $"{Against(SeedDownRules.Soil70)} {Against(SeedDownRules.Calendar)}{(never.Count > 0 ? $" No date ever stood at {string.Join(", ", never)}." : "")}";
    }

    private static string Name(string rule) => rule switch
    {
        SeedDownRules.Seedfall => "Seedfall",
        SeedDownRules.Soil70 => "soil 70",
        _ => rule,
    };

    private static string Lead(string rule, RuleScore r) => rule == SeedDownRules.Seedfall
        ? "-"
        : string.Create(CultureInfo.InvariantCulture, $"{100.0 * r.Lead:+0.0;-0.0} ± {100.0 * r.LeadStandardError:0.0}");

    private static string Share(double? share) => string.Create(CultureInfo.InvariantCulture, $"{100.0 * share:0.0} %");

    private static string Day(int? day) => day is { } d ? ChoiceStation.FirstDay(2001, 1.0).AddDays(d).ToString("MMM d", CultureInfo.InvariantCulture) : "none";

    private static string Upper(string text) => string.Concat(text[..1].ToUpperInvariant(), text.AsSpan(1));
}
