using System.Text.Json;
using System.Text.Json.Serialization;
using Seedfall.Planning.Ground;

namespace Seedfall.Planning.Rules;

/// <summary>The trade's tables as JSON: <c>data/species.json</c> and <c>data/rules/*.json</c>. Strict: an unknown or missing member is refused.</summary>
public static class TradeTablesJson
{
    private static readonly JsonSerializerOptions Strict = new()
    {
        PropertyNamingPolicy = JsonNamingPolicy.CamelCase,
        UnmappedMemberHandling = JsonUnmappedMemberHandling.Disallow,
        RespectNullableAnnotations = true,
        RespectRequiredConstructorParameters = true,
        AllowDuplicateProperties = false,
        Converters = { new JsonStringEnumConverter(JsonNamingPolicy.KebabCaseLower, allowIntegerValues: false) },
    };

    /// <summary>Tables from their JSON text.</summary>
    /// <param name="speciesJson">An array of species, one per grass.</param>
    /// <param name="ruleJsons">One object per rule pack; one of them has the id <c>general</c>.</param>
    /// <exception cref="FormatException">Names the text, line and column and what was expected.</exception>
    public static TradeTables Parse(string speciesJson, IEnumerable<string> ruleJsons)
    {
        ArgumentNullException.ThrowIfNull(speciesJson);
        ArgumentNullException.ThrowIfNull(ruleJsons);
        var species = Read<List<SpeciesFacts>>(speciesJson, "species table");
        var packs = ruleJsons.Select((json, i) => Read<RulePack>(json, $"rule pack {i + 1}")).ToList();
        RequireEachGrassOnce(species);
        species.ForEach(RequireGerminable);
        RequireDistinctPacks(packs);
        return new TradeTables(species, [.. packs.OrderBy(p => p.Id, StringComparer.Ordinal)]);
    }

    private static T Read<T>(string json, string what)
    {
        try
        {
            return JsonSerializer.Deserialize<T>(json, Strict) ?? throw new FormatException($"{what}: a value was expected, null was found");
        }
        catch (JsonException e)
        {
            throw new FormatException($"{what}, line {(e.LineNumber ?? 0) + 1}, column {(e.BytePositionInLine ?? 0) + 1}: {e.Message}", e);
        }
    }

    private static void RequireEachGrassOnce(List<SpeciesFacts> species)
    {
        foreach (var grass in Enum.GetValues<GrassSpecies>())
        {
            var count = species.Count(s => s.Species == grass);
            if (count != 1)
            {
                throw new FormatException($"species table: {grass} must stand in it once, found {count} times");
            }
        }
    }

    /// <summary>A grass whose germination figures contradict each other would never come up in the simulator.</summary>
    private static void RequireGerminable(SpeciesFacts s)
    {
        if (!(s.BaseTemperatureC.Value < s.OptimumC.Low && s.OptimumC.Low <= s.OptimumC.High && s.OptimumC.High < s.CeilingC.Value))
        {
            throw new FormatException($"species table: {s.Species}: base below optimum below ceiling temperature is needed");
        }

        if (!(s.BasePotential50.Value < 0.0 && s.BasePotentialSpread.Value > 0.0 && s.HydrothermalTime.Value > 0.0 && s.Phyllochron.Value > 0.0 && s.CoverRateAt15.Value > 0.0))
        {
            throw new FormatException($"species table: {s.Species}: a base potential below 0 and every other germination and growth figure above 0 is needed");
        }
    }

    private static void RequireDistinctPacks(List<RulePack> packs)
    {
        var twice = packs.GroupBy(p => p.Id, StringComparer.Ordinal).FirstOrDefault(g => g.Count() > 1);
        if (twice is not null)
        {
            throw new FormatException($"rule packs: the id {twice.Key} stands on {twice.Count()} packs");
        }

        if (packs.All(p => p.Id != "general"))
        {
            throw new FormatException("rule packs: the pack with the id general is missing");
        }
    }
}
