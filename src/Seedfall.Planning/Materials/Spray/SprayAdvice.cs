using Seedfall.Engine.Workings;
using Seedfall.Planning.Ground;
using Seedfall.Planning.Plan;

namespace Seedfall.Planning.Materials;

/// <summary>Lines worth knowing about the planned spraying.</summary>
internal static class SprayAdvice
{
    private const int MostPartners = 3;
    private const double LowRateGramsPerHectare = 175.1; // 5 fl oz of a 4 lb/gal product per acre

    internal static IEnumerable<Advice> For(Lawn lawn, IReadOnlyList<TankItem> tank, IReadOnlyList<GrassSpecies> seeded)
    {
        if (tank.Count > MostPartners)
        {
            yield return new("spray.partners", $"{tank.Count} products in one tank: more than three together seldom mix well. Split them over two trips.", "extension guidance on tank mixing", Sureness.Published);
        }

        if (lawn.Sprayer?.Kind == SprayerKind.HoseEnd)
        {
            yield return new("spray.hose-end", "A hose-end sprayer's rate wanders with the tap's pressure: catch what it puts out in a bucket before you trust it.", Worked.Practice, Sureness.CommonPractice);
        }

        foreach (var advice in lawn.PreEmergent is { } label ? Label(label, tank, seeded) : [])
        {
            yield return advice;
        }
    }

    private static IEnumerable<Advice> Label(HerbicideLabel label, IReadOnlyList<TankItem> tank, IReadOnlyList<GrassSpecies> seeded)
    {
        if (tank.Any(t => t.Formulation == FormulationClass.Surfactant))
        {
            yield return new("spray.surfactant", "A surfactant is in the tank at seeding: leave it out unless the label asks for it here; it is meant for weeds that are already up.", Worked.Practice, Sureness.CommonPractice);
        }

        if (label.RepeatAfterEmergenceDays is { } days)
        {
            yield return new("spray.repeat", $"A repeat no sooner than {days} days after emergence takes the same amounts again and counts against the year.", "label, as entered", Sureness.Measured);
        }

        if (!Actives.Is(label.ActiveIngredient, Actives.Mesotrione))
        {
            yield break;
        }

        yield return new("spray.activation", "Give it about 0.15 in of water within ten days if no rain comes; the seedbed watering does.", Worked.Practice, Sureness.CommonPractice);
        yield return new("spray.bleaching", "Some weeds and tender grass whiten for one to two weeks and usually recover.", Worked.Practice, Sureness.CommonPractice);
        if (seeded.Any(MixChoice.IsFine))
        {
            yield return new("spray.fine-fescue", "Fine fescues are reported as not labeled at seeding with mesotrione: read your label twice.", "fine-fescue tolerance breeding work, Rutgers University", Sureness.Published);
        }

        if (seeded.Contains(GrassSpecies.PerennialRyegrass) && YearlyUse.Strength(label) is { } strength && LabelRate.ActiveIngredient(label.Rate, strength).KilogramsPerSquareMeter * 1.0e7 > LowRateGramsPerHectare * 1.001)
        {
            yield return new("spray.ryegrass", "With perennial ryegrass in the seed use the low rate, about 5 fl oz per acre of a 4 lb per gallon product.", "low rates: Delaware Cooperative Extension 2008; the number is common practice, no source read", Sureness.CommonPractice);
        }
    }
}
