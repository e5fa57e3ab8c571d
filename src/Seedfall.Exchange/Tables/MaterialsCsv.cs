using Seedfall.Engine.Workings;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Tables;

/// <summary>The shopping list as a table: one row a material, the need in both unit systems, cost where prices are known.</summary>
public static class MaterialsCsv
{
    /// <summary>The table with a byte-order mark, so that spreadsheets read it as UTF-8.</summary>
    public static string Write(RecoveryPlan plan)
    {
        ArgumentNullException.ThrowIfNull(plan);
        var csv = new CsvText();
        foreach (var name in new[] { "id", "name", "purpose", "need_us", "need_us_unit", "need_metric", "need_metric_unit", "buy", $"cost_{plan.Currency.ToLowerInvariant()}" })
        {
            csv.Cell(name);
        }

        csv.EndRow();
        foreach (var line in plan.Materials)
        {
            var (us, metric) = (FigureText.Show(line.Need, UnitSystem.UsCustomary), FigureText.Show(line.Need, UnitSystem.Metric));
            csv.Cell(line.Id).Cell(line.Name).Cell(line.Purpose)
                .Cell(Number(us)).Cell(us.Unit).Cell(Number(metric)).Cell(metric.Unit)
                .Cell(line.Buy).Cell(line.Cost?.Value).EndRow();
        }

        return csv.ToString();
    }

    private static double Number(ShownValue shown) =>
        double.Parse(shown.Number, System.Globalization.NumberStyles.AllowThousands | System.Globalization.NumberStyles.AllowDecimalPoint, System.Globalization.CultureInfo.InvariantCulture);
}
