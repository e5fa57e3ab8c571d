using System.Globalization;
using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>What a soil test says for cool-season turf.</summary>
internal static class SoilAdvice
{
    private const string Lime = "Penn State, Liming Turfgrass Areas";
    private const double LowPh = 6.0;
    private const double HighPh = 7.2;
    private const double LeastPhosphorusPpm = 21.0;
    private const double LeastPotassiumPpm = 37.0;

    internal static IEnumerable<Advice> For(SoilFacts? soil)
    {
        if (soil?.Ph is { } ph)
        {
            yield return Ph(ph);
        }

        if (soil?.PhosphorusPpm is { } phosphorus)
        {
            yield return Phosphorus(phosphorus);
        }

        if (soil?.PotassiumPpm is { } potassium)
        {
            yield return new(
                "soil.potassium",
                potassium < LeastPotassiumPpm
                    ? Text($"Soil potassium {potassium:0.#} ppm is below {LeastPotassiumPpm:0} ppm: choose a feed with potash.")
                    : Text($"Soil potassium {potassium:0.#} ppm is enough: no extra potash is needed."),
                "sustainable minimum for turf, Mehlich-3 potassium 37 ppm",
                Sureness.Published);
        }
    }

    private static Advice Ph(double ph) => ph switch
    {
        < LowPh => new("soil.ph", Text($"Soil pH {ph:0.0} is below {LowPh:0.0}: lime by the lab's buffer test, at most 50 lb of ground limestone per 1,000 sq ft at once on standing turf."), $"{Lime}; the 50 lb is common practice, no source read", Sureness.CommonPractice),
        > HighPh => new("soil.ph", Text($"Soil pH {ph:0.0} is above {HighPh:0.0}: no lime; expect iron to be short before anything else."), Lime, Sureness.Published),
        _ => new("soil.ph", Text($"Soil pH {ph:0.0} suits cool-season turf ({LowPh:0.0} to {HighPh:0.0}): no lime."), Lime, Sureness.Published),
    };

    private static Advice Phosphorus(double ppm) => ppm switch
    {
        >= PhosphorusLimit.EnoughPpm => new("soil.phosphorus", Text($"Soil phosphorus {ppm:0.#} ppm: none is recommended on home lawns from {PhosphorusLimit.EnoughPpm:0} ppm."), "Penn State soil laboratory, Mehlich-3, read second-hand", Sureness.CommonPractice),
        < LeastPhosphorusPpm => new("soil.phosphorus", Text($"Soil phosphorus {ppm:0.#} ppm is below the {LeastPhosphorusPpm:0} ppm turf can live on: seedlings will want starter phosphate where the law lets it go on."), "sustainable minimum for turf, Mehlich-3 phosphorus 21 ppm", Sureness.Published),
        _ => new("soil.phosphorus", Text($"Soil phosphorus {ppm:0.#} ppm is enough for standing turf; seedlings may still gain from a starter."), "Penn State soil laboratory, Mehlich-3, read second-hand", Sureness.CommonPractice),
    };

    private static string Text(FormattableString text) => text.ToString(CultureInfo.InvariantCulture);
}
