using System.Globalization;
using System.Text;
using Seedfall.Engine.Simulation;
using Seedfall.Engine.Simulation.Forcing;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Validation;
using Seedfall.Fit.Plots;

namespace Seedfall.Fit;

/// <summary>Writes the soil temperature section of <c>docs/validation.md</c> and leaves the other sections alone.</summary>
internal static class ValidationPage
{
    internal const string Heading = "## Soil temperature at 5 cm";

    internal static void Write(string file, string pictures, SoilHeatConstants constants, IReadOnlyDictionary<InputSet, IReadOnlyList<StationOutcome>> outcomes)
    {
        var full = outcomes[InputSet.Full];
        SoilPlots.ByStation(Path.Combine(pictures, "soil-by-station.svg"), full);
        SoilPlots.Density(Path.Combine(pictures, "soil-density.svg"), full);
        SoilPlots.BySeason(Path.Combine(pictures, "soil-by-season.svg"), full);
        SoilPlots.Reliability(Path.Combine(pictures, "crossing-reliability.svg"), full);
        PageSection.Write(file, Heading, Section(constants, outcomes));
    }

    private static string Section(SoilHeatConstants constants, IReadOnlyDictionary<InputSet, IReadOnlyList<StationOutcome>> outcomes)
    {
        var page = new StringBuilder();
        page.Append(CultureInfo.InvariantCulture, $"""
            Fitted {constants.Fitted:yyyy-MM-dd}. Daily mean soil temperature at 5 cm, August to November, {constants.Stations.Count} stations of the U.S. Climate
            Reference Network, soil probes 2009 to 2023. Each station is scored with everything (estimates, column, regression, product)
            fitted without it; the column's numbers without a station are one Gauss-Newton step from the optimum over all stations, the
            rest is fitted afresh. Errors are computed minus measured, degC. No wind is measured there: 2 m/s is assumed. The stations stand
            in natural or mown grass and are not watered; a lawn differs by what the column says its shade, cover and water change.

            Rerun: `dotnet run -c Release --project bench/Seedfall.Fit -- STATIONS_DIR --date {constants.Fitted:yyyy-MM-dd}` (fits, writes
            `data/soil-heat.json`, `docs/validation/soil-left-out.json` and this section). Score shipped constants on any stations:
            `seedfall validate soil DIR --json`.

            - *column*: the calibrated heat column alone; *regression*: the pooled regression alone; *product*: column and regression
              together, what a plan uses; *air7*: exponential mean of air temperature over 7 days; *climatology*: the station's own week in its other years.


            """);
        foreach (var (inputs, list) in outcomes)
        {
            Pooled(page, inputs, list);
        }

        PerStation(page, outcomes);
        Crossings(page, outcomes);
        Forecasts(page, outcomes[InputSet.Full]);
        Readings(page, outcomes);
        Column(page, constants.Column);
        return page.ToString();
    }

    private static void Pooled(StringBuilder page, InputSet inputs, IReadOnlyList<StationOutcome> outcomes)
    {
        var from = inputs == InputSet.Full ? "With measured mean temperature, sun and humidity" : "From Tmax, Tmin and rain only (the rest estimated)";
        page.Append(CultureInfo.InvariantCulture, $"### {from}\n\n| method | n | RMSE | MAE | bias | RMSE, {outcomes.Count(o => o.Humid)} humid stations |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (var method in SoilScoreMethods.All)
        {
            var all = Merge(outcomes.Select(o => o.Methods[method]))!;
            var humid = Merge(outcomes.Where(o => o.Humid).Select(o => o.Methods[method]))!;
            page.Append(CultureInfo.InvariantCulture, $"| {method} | {all.N} | {all.Rmse:F3} | {all.Mae:F3} | {all.Bias:+0.000;-0.000} | {humid.Rmse:F3} |\n");
        }

        page.Append('\n');
    }

    private static void PerStation(StringBuilder page, IReadOnlyDictionary<InputSet, IReadOnlyList<StationOutcome>> outcomes)
    {
        page.Append("### By station\n\nRMSE, degC; in brackets the product's bias. Humid (h): ln(rain / reference evapotranspiration) above -0.5.\n\n| station | n | column | product | regression | air7 | climatology | product, Tmax/Tmin/rain |\n| --- | --- | --- | --- | --- | --- | --- | --- |\n");
        var plain = outcomes[InputSet.Extremes].ToDictionary(o => o.Station);
        foreach (var outcome in outcomes[InputSet.Full])
        {
            var e = outcome.Methods.ToDictionary(m => m.Key, m => m.Value.Summary());
            var p = e[SoilScoreMethods.Product]!;
            var q = plain[outcome.Station].Methods[SoilScoreMethods.Product].Summary()!;
            page.Append(CultureInfo.InvariantCulture, $"| {outcome.Station}{(outcome.Humid ? " (h)" : "")} | {p.N} | {e[SoilScoreMethods.Column]!.Rmse:F2} | {p.Rmse:F2} ({p.Bias:+0.00;-0.00}) | {e[SoilScoreMethods.Regression]!.Rmse:F2} | {e[SoilScoreMethods.Air7]!.Rmse:F2} | {e[SoilScoreMethods.Climatology]?.Rmse:F2} | {q.Rmse:F2} ({q.Bias:+0.00;-0.00}) |\n");
        }

        page.Append("\n![Error by station and method](validation/soil-by-station.svg)\n\n![Computed and measured temperature, days by cells of one degree](validation/soil-density.svg)\n\n![Error and bias by half-month](validation/soil-by-season.svg)\n\n");
    }

    private static void Crossings(StringBuilder page, IReadOnlyDictionary<InputSet, IReadOnlyList<StationOutcome>> outcomes)
    {
        page.Append("### Date the soil falls below a threshold\n\nFirst day from 1 August on which the trailing 5-day mean is below and stays below for 3 days; weather known, all stations. Usual date: mean of the station's other years.\n\n| threshold | seasons | product MAE, d | bias, d | Tmax/Tmin/rain MAE, d | usual date MAE, d |\n| --- | --- | --- | --- | --- | --- |\n");
        var plain = CrossingErrors.Of(outcomes[InputSet.Extremes]).ToDictionary(c => c.ThresholdF);
        foreach (var row in CrossingErrors.Of(outcomes[InputSet.Full]))
        {
            page.Append(CultureInfo.InvariantCulture, $"| {row.ThresholdF:F0} degF | {row.Product.N} | {row.Product.Mae:F2} | {row.Product.Bias:+0.00;-0.00} | {plain[row.ThresholdF].Product.Mae:F2} | {row.Climatology?.Mae:F2} |\n");
        }

        page.Append("\n70 degF lies on the flat end of summer: its date is not usefully predictable, and the program leads with the chance curve instead.\n\n");
    }

    private static void Forecasts(StringBuilder page, IReadOnlyList<StationOutcome> outcomes)
    {
        page.Append("### Chances of crossing dates\n\nWeather as measured to the issue day, then each other year's; members blurred by the model's own error at that threshold. Hit rates of the central intervals (50, 80 and 90 % are honest); CRPS in days beside that of the station's own measured other years; Brier skill over the same for having crossed by their median date.\n\n| issued | threshold | seasons | in 50 % | in 80 % | in 90 % | CRPS, d | usual CRPS, d | Brier skill |\n| --- | --- | --- | --- | --- | --- | --- | --- | --- |\n");
        var errors = CrossingErrors.Of(outcomes).ToDictionary(c => c.ThresholdF, c => c.Product.Rmse);
        foreach (var month in StationOutcome.IssueMonths)
        {
            foreach (var group in outcomes.SelectMany(o => o.ForecastsByIssueMonth[month]).GroupBy(f => f.ThresholdF).OrderByDescending(g => g.Key))
            {
                var r = CrossingReliability.Of([.. group], errors[group.Key]);
                page.Append(CultureInfo.InvariantCulture, $"| {(month == 8 ? "1 August" : "1 September")} | {group.Key:F0} degF | {r.Count} | {r.Hit50:P0} | {r.Hit80:P0} | {r.Hit90:P0} | {r.Crps:F2} | {r.UsualCrps:F2} | {r.BrierSkill:+0.00;-0.00} |\n");
            }
        }

        page.Append("\n![How often the date fell into the stated interval](validation/crossing-reliability.svg)\n\nBrier skill at or below 0 means that the chances of a date say no more than the usual dates do: so it is at 70 degF, and the program says it beside that date and leads with the chance of a stand; elsewhere the skill is small. The station's own measured years know the site; the product does not, so at a place without measurements no such rival exists.\n\n");
    }

    private static void Readings(StringBuilder page, IReadOnlyDictionary<InputSet, IReadOnlyList<StationOutcome>> outcomes)
    {
        page.Append("### Three readings\n\nError of the 14 days after readings at 0, 4 and 8 days before (15 August to 17 October, every tenth day). A reading here is the station's daily mean; a hand thermometer does somewhat worse.\n\n| inputs | days | MAE without | MAE with | RMSE without | RMSE with |\n| --- | --- | --- | --- | --- | --- |\n");
        foreach (var (inputs, list) in outcomes)
        {
            var (without, with) = (Merge(list.Select(o => o.WithoutReadings))!, Merge(list.Select(o => o.WithReadings))!);
            page.Append(CultureInfo.InvariantCulture, $"| {(inputs == InputSet.Full ? "full" : "Tmax/Tmin/rain")} | {with.N} | {without.Mae:F3} | {with.Mae:F3} | {without.Rmse:F3} | {with.Rmse:F3} |\n");
        }

        page.Append('\n');
    }

    private static void Column(StringBuilder page, HeatParameters parameters)
    {
        page.Append("### Fitted numbers of the column\n\n| number | value | held between |\n| --- | --- | --- |\n");
        var values = HeatParameterBounds.ToVector(parameters);
        for (var i = 0; i < values.Length; i++)
        {
            var (name, low, high) = HeatParameterBounds.All[i];
            page.Append(CultureInfo.InvariantCulture, $"| {name} | {values[i]:G4} | {low:G3} and {high:G3} |\n");
        }
    }

    internal static ErrorSummary? Merge(IEnumerable<ErrorTally> tallies)
    {
        var merged = new ErrorTally();
        foreach (var tally in tallies)
        {
            merged.Add(tally);
        }

        return merged.Summary();
    }
}
