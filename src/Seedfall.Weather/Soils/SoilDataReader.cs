using System.Text.Json;
using Seedfall.Weather.Input;

namespace Seedfall.Weather.Soils;

/// <summary>
/// Reads the table Soil Data Access answers with in the form JSON+COLUMNNAME+METADATA: a row of names, a row about them, then rows
/// whose values are all texts or null. Columns are found by name; nothing is half-read.
/// </summary>
public static class SoilDataReader
{
    /// <summary>Largest answer read, bytes.</summary>
    public const int MostBytes = 2 << 20;

    private const string Name = "soil survey answer";
    private const int MostRows = 2000;

    /// <summary>The answer to <see cref="SoilDataQuery.Text"/>.</summary>
    public static SoilMapAnswer Read(ReadOnlySpan<byte> utf8)
    {
        if (utf8.Length > MostBytes)
        {
            return Refused("at most 2 MB", "more");
        }

        if (utf8.Trim(" \t\r\n"u8).IsEmpty)
        {
            return new SoilMapAnswer(SoilMapOutcome.Nothing, null, null);
        }

        if (utf8.TrimStart(" \t\r\n"u8).StartsWith("<"u8))
        {
            return Refused("a table in JSON", "a page or an error message: the service may be closed for its daily upkeep");
        }

        try
        {
            using var document = JsonDocument.Parse(utf8.ToArray(), new JsonDocumentOptions { MaxDepth = 8 });
            return Table(document.RootElement);
        }
        catch (JsonException e)
        {
            return new SoilMapAnswer(SoilMapOutcome.Refused, null, new FileProblem(Name, (int)(e.LineNumber ?? 0) + 1, (int)(e.BytePositionInLine ?? 0) + 1, "JSON", "text that breaks its grammar, ends too soon or nests too deep"));
        }
        catch (InvalidOperationException)
        {
            return Refused("text in UTF-8", "bytes that are none");
        }
        catch (RefusedException e)
        {
            return Refused(e.Expected, e.Found);
        }
    }

    private static SoilMapAnswer Table(JsonElement root)
    {
        if (root.ValueKind != JsonValueKind.Object)
        {
            return Refused("an object with the field Table", $"a JSON {root.ValueKind}");
        }

        if (!root.TryGetProperty("Table", out var table))
        {
            return root.EnumerateObject().Any() ? Refused("an object with the field Table", "other fields") : new SoilMapAnswer(SoilMapOutcome.Nothing, null, null);
        }

        if (table.ValueKind != JsonValueKind.Array || table.GetArrayLength() is < 2 or > MostRows + 2)
        {
            return Refused($"a row of names, a row about them and at most {MostRows} rows", table.ValueKind == JsonValueKind.Array ? $"{table.GetArrayLength()} rows" : $"a JSON {table.ValueKind}");
        }

        var columns = new SoilColumns(table[0]);
        SoilRow[] rows = [.. table.EnumerateArray().Skip(2).Select(columns.Row)];
        return rows.Length == 0 ? new SoilMapAnswer(SoilMapOutcome.Nothing, null, null) : Unit(rows);
    }

    /// <summary>Where a place lies on a border several units may be told; the first is taken.</summary>
    private static SoilMapAnswer Unit(SoilRow[] rows)
    {
        var own = rows.Where(r => r.MapUnitKey == rows[0].MapUnitKey).ToArray();
        SoilComponent[] components = [.. own.GroupBy(r => r.ComponentKey).Select(Component).OrderByDescending(c => c.SharePct ?? 0.0)];
        var unit = new SoilMapUnit(rows[0].MapUnitKey, rows[0].MapUnitName, components);
        return new SoilMapAnswer(SurfaceSoil.Of(unit) is null ? SoilMapOutcome.NotSoil : SoilMapOutcome.Found, unit, null);
    }

    private static SoilComponent Component(IGrouping<string, SoilRow> rows)
    {
        var first = rows.First();
        return new SoilComponent(first.Name, first.SharePct, first.Kind, first.Drainage, first.HydrologicGroup, first.SlopePct, [.. rows.Select(r => r.Horizon).OfType<SoilHorizon>().OrderBy(h => h.TopCm)]);
    }

    private static SoilMapAnswer Refused(string expected, string found) => new(SoilMapOutcome.Refused, null, new FileProblem(Name, 0, 0, expected, found));
}
