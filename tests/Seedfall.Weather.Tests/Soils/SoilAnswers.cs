using System.Text;
using System.Text.Json;

namespace Seedfall.Weather.Tests.Soils;

/// <summary>
/// Answers composed by hand after the documented form of Soil Data Access (JSON+COLUMNNAME+METADATA): soils, keys and numbers are
/// invented, none was fetched.
/// </summary>
internal static class SoilAnswers
{
    internal static readonly string[] Columns =
    [
        "mukey", "muname", "cokey", "compname", "comppct_r", "compkind", "drainagecl", "hydgrp", "slope_r",
        "hzdept_r", "hzdepb_r", "sandtotal_r", "silttotal_r", "claytotal_r", "om_r", "ph1to1h2o_r", "awc_r", "ksat_r",
    ];

    private const string Unit = "Example-Urban land complex, 2 to 6 percent slopes";

    /// <summary>A house lot: urban land without layers beside a loam of two layers.</summary>
    internal static byte[] HouseLot => Table(
        ["9990001", Unit, "1", "Urban land", "60", "Miscellaneous area", null, null, "4", null, null, null, null, null, null, null, null, null],
        ["9990001", Unit, "2", "Example", "35", "Series", "Well drained", "B", "4", "0", "10", "42", "38", "20", "3.5", "6.4", "0.18", "9"],
        ["9990001", Unit, "2", "Example", "35", "Series", "Well drained", "B", "4", "10", "30", "38", "36", "26", "1.5", "6.8", "0.16", "4"]);

    internal static byte[] Water => Table(["9990002", "Water", "7", "Water", "100", "Miscellaneous area", null, null, null, null, null, null, null, null, null, null, null, null]);

    internal static byte[] Table(params string?[][] rows) => JsonSerializer.SerializeToUtf8Bytes(new { Table = (string?[][])[Columns, [.. Columns.Select((_, i) => $"ColumnOrdinal={i},DataTypeName=varchar")], .. rows] });

    internal static byte[] Bytes(string text) => Encoding.UTF8.GetBytes(text);
}
