using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>The year's use of a pre-emergent against the most its label allows.</summary>
public static class YearlyUse
{
    /// <summary>Highest yearly use of mesotrione on turf, g of active ingredient per ha (HortScience 53(11):1689).</summary>
    public const double MesotrioneGramsPerHectare = 560.0;

    /// <summary>Most in one year: as entered from the label; for mesotrione the published figure where none was entered; null where neither is known.</summary>
    public static VolumePerArea? Maximum(HerbicideLabel label)
    {
        ArgumentNullException.ThrowIfNull(label);
        if (label.MaximumPerYear is { } entered)
        {
            return entered;
        }

        return Actives.Is(label.ActiveIngredient, Actives.Mesotrione)
            ? LabelRate.ProductFor(MassPerArea.FromGramsPerSquareMeter(MesotrioneGramsPerHectare / 1.0e4), label.StrengthKgPerLiter ?? LabelRate.StrengthFromPoundsPerGallon(4.0))
            : null;
    }

    /// <summary>Already applied this year: the entered figure, or the sum of the past sprays of the same active ingredient where that is more.</summary>
    public static VolumePerArea Applied(HerbicideLabel label, IReadOnlyList<PastSpray> past, int year)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(past);
        var recorded = past.Where(p => p.Date.Year == year && Actives.Is(p.ActiveIngredient, label.ActiveIngredient)).Sum(p => p.Rate?.LitersPerSquareMeter ?? 0.0);
        return VolumePerArea.FromLitersPerSquareMeter(Math.Max(recorded, label.AppliedThisYear.LitersPerSquareMeter));
    }

    /// <summary>True when the applications together stay at or below the maximum, within a part in a million.</summary>
    public static bool Fits(VolumePerArea maximum, params ReadOnlySpan<VolumePerArea> applications)
    {
        var sum = 0.0;
        foreach (var application in applications)
        {
            sum += application.LitersPerSquareMeter;
        }

        return sum <= maximum.LitersPerSquareMeter * (1.0 + 1.0e-6);
    }
}
