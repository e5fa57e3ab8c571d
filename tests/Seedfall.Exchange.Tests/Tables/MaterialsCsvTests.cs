using Seedfall.Exchange.Catalog;
using Seedfall.Exchange.Demo;
using Seedfall.Exchange.Tables;
using Seedfall.Planning.Plan;

namespace Seedfall.Exchange.Tests.Tables;

public sealed class MaterialsCsvTests
{
    private static readonly RecoveryPlan Plan = RecoveryPlanner.Plan(DemoTown.Lawns[0], new Choices { Season = DemoTown.Season, Today = DemoTown.Today }, DemoTown.Weather, Trade.Tables);

    [Fact]
    public void EveryMaterialIsARowOfNineCells()
    {
        var rows = MaterialsCsv.Write(Plan).TrimStart('\uFEFF').Split("\r\n", StringSplitOptions.RemoveEmptyEntries);
        Assert.Equal(Plan.Materials.Count + 1, rows.Length);
        Assert.StartsWith("id,name,purpose,need_us,need_us_unit,need_metric,need_metric_unit,buy,cost_", rows[0], StringComparison.Ordinal);
    }

    [Theory]
    [InlineData("=1+1")]
    [InlineData("+SUM(A1)")]
    [InlineData("-2")]
    [InlineData("@cmd")]
    [InlineData("\tx")]
    [InlineData("\uFF1D1")]
    public void TextThatLooksLikeAFormulaIsMadeText(string name)
    {
        // OWASP ASVS 5.0 item 1.2.10: formula characters at the start of an exported cell are escaped.
        var csv = MaterialsCsv.Write(Plan with { Materials = [Plan.Materials[0] with { Name = name }] });
        Assert.Contains($"'{name}", csv, StringComparison.Ordinal);
    }

    [Fact]
    public void CommasAndQuotesAreQuoted()
    {
        // RFC 4180 section 2, rules 6 and 7.
        var csv = MaterialsCsv.Write(Plan with { Materials = [Plan.Materials[0] with { Name = "straw, \"clean\"" }] });
        Assert.Contains("\"straw, \"\"clean\"\"\"", csv, StringComparison.Ordinal);
    }
}
