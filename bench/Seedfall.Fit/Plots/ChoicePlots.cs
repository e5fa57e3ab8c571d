using System.Globalization;
using Seedfall.Engine.Simulation.Ensemble;
using Seedfall.Engine.Validation.Choice;

namespace Seedfall.Fit.Plots;

/// <summary>Pictures of the choice of the seed-down day.</summary>
internal static class ChoicePlots
{
    private static readonly (Mark Mark, string Name, string Rule)[] Rules =
    [
        (new Mark(Shape.Circle, Sheet.Spruce), "Seedfall's day", SeedDownRules.Seedfall),
        (new Mark(Shape.Diamond, Sheet.Straw), "soil at 70 degF", SeedDownRules.Soil70),
        (new Mark(Shape.Square, Sheet.Soil, Filled: false), "calendar", SeedDownRules.Calendar),
        (new Mark(Shape.Circle, Sheet.Pencil, Filled: false), "hindsight", SeedDownRules.Hindsight),
    ];

    internal static void ByStation(string file, ChoiceReport report)
    {
        IReadOnlyList<Dot> Dots(ChoiceScore score) => [.. Rules.Reverse().Select(r => new Dot(r.Mark, score.Rules[r.Rule].Success, score.Rules[r.Rule].StandardError))];
        DotRows.Save(
            file,
            $"Autumns with a stand, by who chose the day: {report.Scene.Replace('-', ' ')}",
            "Share of past seasons with an established stand by station and rule; Seedfall's day chosen without the season.",
            [.. Rules.Select(r => (r.Mark, r.Name))],
            [
                .. report.Stations.Where(s => s.Seasons > 0).Select(s => ((string?)DotRows.Words(s.Station), Dots(s))),
                (null, []),
                ("all, with standard errors", Dots(report.Pooled!)),
            ],
            new Axis(0.0, 1.0, 230, 790),
            0.2,
            DotRows.Percent,
            "share of seasons with a stand, by simulation");
    }

    /// <summary>Chance by date at one station, watered and not, with what each season's best day was.</summary>
    internal static void Curves(string file, string station, IReadOnlyList<(string Name, string Color, StandTable Table, IReadOnlyList<ChoiceSeason> Seasons)> scenes, DateOnly first)
    {
        var sheet = new Sheet(840, 430, $"Chance of a stand by seed-down day, {DotRows.Words(station)}", "Share of past seasons with a stand by seed-down day, watered and by rain alone; below, each season's best day.");
        var (across, up) = (new Axis(0, ChoiceStation.Dates - 1, 64, 796), new Axis(0, 1, 320, 76));
        foreach (var share in up.Every(0.25))
        {
            sheet.Line(across.From, up.At(share), across.To, up.At(share), width: 0.6);
            sheet.Text(across.From - 8, up.At(share) + 4, DotRows.Percent(share), "end");
        }

        foreach (var day in Enumerable.Range(0, ChoiceStation.Dates).Where(d => first.AddDays(d).Day is 1 or 15))
        {
            sheet.Line(across.At(day), 76, across.At(day), 392, width: 0.6);
            sheet.Text(across.At(day), 412, first.AddDays(day).ToString("MMM d", CultureInfo.InvariantCulture), "middle");
        }

        var (left, row) = (64.0, 344.0);
        foreach (var (name, color, table, seasons) in scenes)
        {
            sheet.Path(Enumerable.Range(0, ChoiceStation.Dates).Select(d => (across.At(d), up.At(table.Share(d)))), color, 2.4);
            sheet.Line(left, 48, left + 26, 48, color, 2.4);
            sheet.Text(left + 34, 52, name);
            left += 60 + (7.2 * name.Length);
            foreach (var season in seasons)
            {
                if (season.Rules[SeedDownRules.Hindsight].Day is { } best)
                {
                    sheet.Line(across.At(best), row, across.At(best), row + 16, color, 1.6);
                }
            }

            sheet.Text(across.From - 8, row + 13, "best", "end", 12);
            row += 26;
        }

        sheet.Save(file);
    }
}
