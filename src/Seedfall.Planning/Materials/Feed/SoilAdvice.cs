using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>What a soil test says for cool-season turf.</summary>
internal static class SoilAdvice
{
    internal static IEnumerable<Advice> For(SoilFacts? soil) =>
        SoilReadings.Of(soil).Select(r => new Advice(r.Figure.Id, r.Sentence, r.Figure.Working.Source, r.Figure.Working.Sureness));
}
