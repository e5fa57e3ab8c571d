using System.Globalization;
using System.Text;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Validation.Watering;
using Seedfall.Engine.Weather;
using Seedfall.Exchange.Catalog;
using Seedfall.Planning.Timing;
using Seedfall.Planning.Water;

namespace Seedfall.Fit;

/// <summary>Writes the section on watering, with the shipped constants.</summary>
internal static class WaterPage
{
    private const string Heading = "## Watering";

    internal static void Write(string file, IReadOnlyList<WeatherHistory> histories)
    {
        var reports = WateringValidation.Score(histories, WateringScenes.All(Trade.Tables), ChoiceScenes.UsualDay, SoilHeatConstants.Shipped);
        PageSection.Write(file, Heading, Body(reports), ChoicePage.Heading);
    }

    private static string Body(IReadOnlyList<WateringReport> reports)
    {
        var scored = reports[0].Stations.Where(s => s.Seasons > 0).ToList();
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            How much water keeps a seedbed wet, and who comes near it? The last {WateringStation.MostSeasons} autumns without holes at {scored.Count} stations ({scored.Sum(s => s.Seasons)} seasons), {WateringStation.Days} days from the usual
            seed-down day of the latitude, on sand, loam and clay. Everything here is judged by the simulator that also plans: it compares ways of watering, it does not
            check the simulator against seedbeds.

            Scene: open level ground, one fifth living turf, straw on half of it; three grasses raked in 4 mm deep; soaked with 0.2 in on each of three evenings before.
            Rounds may fall at 7, 11 and 15 h.

            - *daily*: Seedfall decides each midnight. It knows the water in the ground from the weather to that hour, and of what comes only what is usual: no rain, and
              the usual demand of the date (mean over the station's other seasons, seven days around it) moved halfway to yesterday's. It seeks the least water over two
              days that keeps the seed's layer at -0.1 MPa or wetter and every layer from the surface to 60 mm at -0.5, a later round counting less by the chance of a soaking
              rain before it (share of days with 0.2 in in the other seasons); rounds from 0.05 in. *daily-foreseen*: the same, told the true weather of today and tomorrow.
            - *textbook*: 0.1 in in each of the three rounds, rain or not. *once-a-day*: the same water at 7 h.
            - *least*: all weather known, the same rounds, any depth, the same layers held: a search over just-enough rounds (each is the least that lasts to some later round; the three
              branches that used least are kept among those that run dry in the same hour). It finds a plan that can be followed, so the true limit is no higher. In a case of one
              clear day on each soil the linear program on the water balance, made linear around its plan, finds at most 5 % less, and no plan of a 0.25 mm grid on the six
              layers takes less (`tests/Seedfall.Engine.Tests/Simulation/WateringTests.cs`).
            - *least-dry*: the same where only the seed's layer counts and may dry to -0.5 MPa. It shows why that is not the aim: it costs plants and days.
            - *dry*: hours of {24 * WateringStation.Days} in which the seed's layer is below -0.5 MPa. *short*: hours in which what *daily* and *least* hold is not held. *up*: live seed up and alive after four weeks
              (what water, heat and rot take is charged, birds and burial are not). *days*: until half the seed of the slowest grass is up.

            Bars: dry hours of *daily* no more than *textbook*'s; water at least 30 % less than *textbook*'s; within 25 % of *least*.

            Rerun: `./dev validate --water` (this section), or `seedfall validate water DIR --json`.

            ### All stations


            """);
        page.Append("| soil | way | dry h | worst season | short h | too wet h | water in (mm) | runoff mm | drains mm | up | days | never up |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var report in reports.Where(r => r.Pooled is not null))
        {
            foreach (var (way, w) in report.Pooled!.Ways)
            {
                page.Append(CultureInfo.InvariantCulture, $"| {report.Soil} | {way} | {w.DryHours:0.0} | {w.MostDryHours:0} | {w.ShortHours:0.0} | {w.TooWetHours:0.0} | {w.WaterMm / 25.4:0.00} ({w.WaterMm:0.0}) | {w.RunoffMm:0.0} | {w.DrainageMm:0.0} | {100.0 * w.UpShare:0} % | {w.EmergenceDays:0.0} | {w.NeverUp} |\n");
            }
        }

        page.Append("\n### The bars\n\n| soil | dry h, daily and textbook | water of textbook's | of least | stations that keep all three |\n| --- | --- | --- | --- | --- |\n");
        foreach (var report in reports.Where(r => r.Pooled is not null))
        {
            var (p, stations) = (report.Pooled!, report.Stations.Where(s => s.Seasons > 0).ToList());
            page.Append(CultureInfo.InvariantCulture, $"| {report.Soil} | {p.Ways[WateringWays.Daily].DryHours:0.0} and {p.Ways[WateringWays.Textbook].DryHours:0.0} ({Met(p.NoDrier)}) | {100.0 * p.OfTextbook:0} % ({Met(p.SavesThreeTenths)}) | {100.0 * p.OfLeast:0} % ({Met(p.NearLeast)}) | {stations.Count(Keeps)} of {stations.Count} |\n");
        }

        page.Append("\nThe first bar is kept at zero on both sides: at -0.5 MPa neither is ever dry. At the wetter line that *daily* means to hold, *short h* above, the fixed rounds are\nhardly ever short and *daily* is for one or two hours of a day on average; told tomorrow's weather it is not. What it costs shows in *up* and *days*. The third bar is missed\nwhere rain is most frequent: water given before a rain that nobody foresaw is lost.\n");
        foreach (var report in reports)
        {
            Stations(page, report);
        }

        return page.ToString();
    }

    private static void Stations(StringBuilder page, WateringReport report)
    {
        page.Append(CultureInfo.InvariantCulture, $"\n### By station: {report.Soil}\n\nWater in mm, dry hours in brackets; *up* of daily and textbook.\n\n| station | daily | foreseen | textbook | once a day | least | least-dry | of textbook | of least | up | bars |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        foreach (var s in report.Stations.Where(s => s.Seasons > 0))
        {
            var cells = string.Join(" | ", WateringWays.All.Select(way => string.Create(CultureInfo.InvariantCulture, $"{s.Ways[way].WaterMm:0.0} ({s.Ways[way].DryHours:0.0})")));
            page.Append(CultureInfo.InvariantCulture, $"| {s.Station} | {cells} | {100.0 * s.OfTextbook:0} % | {100.0 * s.OfLeast:0} % | {100.0 * s.Ways[WateringWays.Daily].UpShare:0} and {100.0 * s.Ways[WateringWays.Textbook].UpShare:0} % | {(Keeps(s) ? "kept" : Missed(s))} |\n");
        }

        foreach (var s in report.Stations.Where(s => s.Notes.Count > 0))
        {
            page.Append(CultureInfo.InvariantCulture, $"\n{s.Station}: {string.Join("; ", s.Notes)}.\n");
        }
    }

    private static bool Keeps(WateringScore s) => s.NoDrier && s.SavesThreeTenths && s.NearLeast;

    private static string Missed(WateringScore s) =>
        string.Join(", ", new[] { s.NoDrier ? null : "drier", s.SavesThreeTenths ? null : "saves too little", s.NearLeast ? null : "above least" }.OfType<string>());

    private static string Met(bool met) => met ? "met" : "missed";
}
