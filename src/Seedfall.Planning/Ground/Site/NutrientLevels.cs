using Seedfall.Engine.Soil;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Ground;

/// <summary>
/// Phosphorus, potassium, calcium and magnesium of a soil report. Two schools disagree on what is enough: the minimum turf was found
/// to live on, and the older sufficiency levels; both are told where they differ.
/// </summary>
internal static class NutrientLevels
{
    private const string Minimum = "sustainable minimum for turf";
    private const string Sufficiency = "sufficiency levels of Carrow et al. 2003, read second-hand";
    private const string HomeLawns = "Penn State soil laboratory, Mehlich-3, read second-hand";
    private const double LeastPhosphorusPpm = 21.0;
    private const double LeastPotassiumPpm = 37.0;

    internal static IEnumerable<SoilReading> Of(SoilFacts soil)
    {
        if (soil.PhosphorusPpm is { } phosphorus)
        {
            yield return Phosphorus(phosphorus, soil.Extract);
        }

        if (soil.PotassiumPpm is { } potassium)
        {
            yield return Potassium(potassium, soil.Texture is SoilTexture.Sand or SoilTexture.LoamySand);
        }

        if (soil.CalciumPpm is { } calcium)
        {
            yield return Base("calcium", "Calcium", calcium, 331.0, 750.0, "lime, or gypsum where the pH is right");
        }

        if (soil.MagnesiumPpm is { } magnesium)
        {
            yield return Base("magnesium", "Magnesium", magnesium, 47.0, 140.0, "dolomitic limestone where lime is due");
        }
    }

    private static SoilReading Phosphorus(double ppm, SoilExtract extract)
    {
        var (low, enough) = (LeastPhosphorus(extract), PhosphorusLimit.EnoughFor(extract));
        var (level, label) = (ppm < low ? SoilLevel.Low : ppm >= enough ? SoilLevel.High : SoilLevel.Optimum, $"Phosphorus, {Words(extract)}");
        return extract != SoilExtract.Mehlich3
            ? SoilReading.Of("phosphorus", label, ppm, "ppm", (low, enough), level, $"{Words(extract)} {low:0} to {enough:0} ppm, {Sufficiency}", Sureness.CommonPractice, Other(ppm, low, enough, level, extract))
            : SoilReading.Of("phosphorus", label, ppm, "ppm", (low, enough), level, level == SoilLevel.Low ? $"{Minimum}, Mehlich-3 phosphorus 21 ppm" : HomeLawns, level == SoilLevel.Low ? Sureness.Published : Sureness.CommonPractice, level switch
            {
                SoilLevel.High => $"Soil phosphorus {ppm:0.#} ppm: none is recommended on home lawns from {enough:0} ppm.",
                SoilLevel.Low => $"Soil phosphorus {ppm:0.#} ppm is below the {low:0} ppm turf can live on: seedlings will want starter phosphate where the law lets it go on.",
                _ => $"Soil phosphorus {ppm:0.#} ppm is enough for standing turf; seedlings may still gain from a starter.",
            });
    }

    private static FormattableString Other(double ppm, double low, double enough, SoilLevel level, SoilExtract extract) => level switch
    {
        SoilLevel.High => $"Soil phosphorus {ppm:0.#} ppm by {Words(extract)} is plenty (from {enough:0} ppm): the starter goes without phosphate.",
        SoilLevel.Low => $"Soil phosphorus {ppm:0.#} ppm by {Words(extract)} is low (below {low:0} ppm): seedlings will want starter phosphate where the law lets it go on.",
        _ => $"Soil phosphorus {ppm:0.#} ppm by {Words(extract)} is enough for standing turf; seedlings may still gain from a starter.",
    };

    private static SoilReading Potassium(double ppm, bool sandy)
    {
        var (older, high) = sandy ? (50.0, 116.0) : (75.0, 176.0);
        var level = SoilReading.Grade(ppm, LeastPotassiumPpm, high);
        return SoilReading.Of(
            "potassium", "Potassium", ppm, "ppm", (LeastPotassiumPpm, high), level, $"{Minimum}, Mehlich-3 potassium 37 ppm{(ppm >= LeastPotassiumPpm ? $"; {older:0} to {high:0} ppm, {Sufficiency}" : "")}", Sureness.Published,
            level == SoilLevel.Low ? $"Soil potassium {ppm:0.#} ppm is below {LeastPotassiumPpm:0} ppm: choose a feed with potash."
                : ppm < older ? $"Soil potassium {ppm:0.#} ppm is above the {LeastPotassiumPpm:0} ppm turf can live on and below the older {older:0} ppm: a feed with some potash does no harm." : (FormattableString)$"Soil potassium {ppm:0.#} ppm is enough: no extra potash is needed.");
    }

    private static SoilReading Base(string id, string name, double ppm, double low, double high, string remedy)
    {
        var level = SoilReading.Grade(ppm, low, high);
        return SoilReading.Of(
            id, name, ppm, "ppm", (low, high), level, $"{Minimum} (Woods et al. 2016, read second-hand) below, {Sufficiency} above", Sureness.CommonPractice,
            level == SoilLevel.Low ? $"{name} {ppm:0.#} ppm is low (below {low:0} ppm): {remedy}, by the lab's rate."
                : level == SoilLevel.High ? $"{name} {ppm:0.#} ppm is plenty." : (FormattableString)$"{name} {ppm:0.#} ppm is enough.");
    }

    private static double LeastPhosphorus(SoilExtract extract) => extract switch
    {
        SoilExtract.Mehlich3 => LeastPhosphorusPpm,
        SoilExtract.Bray1 => 15.0,
        _ => 12.0,
    };

    private static string Words(SoilExtract extract) => extract switch
    {
        SoilExtract.Mehlich3 => "Mehlich-3",
        SoilExtract.Bray1 => "Bray P-1",
        _ => "Olsen",
    };
}
