using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;
using Seedfall.Planning.Rules;

namespace Seedfall.Planning.Materials;

/// <summary>Lines worth knowing about the mix and the lots.</summary>
internal static class SeedAdvice
{
    private const string Wisconsin = "University of Wisconsin Extension";
    private const string Indiana = "Proctor, Reicher & Weisenberger 2015, HortScience (abstract), West Lafayette, Indiana";
    private const double RyeCrowds = 0.20;

    internal static IEnumerable<Advice> For(Lawn lawn, Choices choices, TradeTables tables, IReadOnlyList<PatchMix> mixes) =>
        mixes.SelectMany(m => Mix(m.Parts)).DistinctBy(a => a.Id).Concat(Shade(lawn, tables, mixes)).Concat(LotQuality.For(lawn, choices));

    private static IEnumerable<Advice> Mix(IReadOnlyList<MixPart> mix)
    {
        var rye = mix.FirstOrDefault(m => m.Species == GrassSpecies.PerennialRyegrass);
        if (rye is null)
        {
            yield break;
        }

        yield return new("seed.mix.rye-drought", "Perennial ryegrass that browns in drought is dead, and it is winter-tender in the upper Midwest.", Wisconsin, Sureness.Published);
        if (mix.All(m => m.Species != GrassSpecies.KentuckyBluegrass))
        {
            yield break;
        }

        yield return new("seed.mix.rye-trial", "How much ryegrass stays is a matter of place and traffic: in a three-year Indiana lawn trial every mixture but pure ryegrass ended above 95 % Kentucky bluegrass, against the usual warning.", Indiana, Sureness.Published);
        if (rye.ShareByWeight.Value > RyeCrowds)
        {
            yield return new("seed.mix.rye-crowds", "More than a fifth of ryegrass by weight is commonly found to make a mainly ryegrass stand.", "Cornell University, Safe Sports Fields", Sureness.Published);
        }
    }

    private static IEnumerable<Advice> Shade(Lawn lawn, TradeTables tables, IReadOnlyList<PatchMix> mixes)
    {
        var leastOfAll = tables.Species.Min(s => s.LeastSunHours.Value);
        foreach (var patch in lawn.Patches.Where(p => p.SunHours is not null))
        {
            var hours = patch.SunHours!.Value;
            var leastOfMix = mixes.Single(m => m.PatchIds.Contains(patch.Id)).Parts.Min(m => tables.For(m.Species).LeastSunHours.Value);
            if (hours < leastOfAll)
            {
                yield return new($"seed.{patch.Id}.shade", FormattableString.Invariant($"{patch.Name} has {hours:0.#} hours of sun: no lawn grass holds below {leastOfAll:0.#}. Open the canopy or plant something else."), "Penn State Extension, shade and fine fescues", Sureness.Published);
            }
            else if (hours < leastOfMix)
            {
                yield return new($"seed.{patch.Id}.shade", FormattableString.Invariant($"{patch.Name} has {hours:0.#} hours of sun, this mix wants {leastOfMix:0.#}: seed it by hand with fine fescue instead."), Worked.Practice, Sureness.CommonPractice);
            }
        }
    }
}
