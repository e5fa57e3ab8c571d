using Seedfall.Engine.Units;

namespace Seedfall.Planning.Materials;

/// <summary>The year's use of a pre-emergent against the most its label allows.</summary>
public static class YearlyUse
{
    /// <summary>Highest yearly use of mesotrione on turf, g of active ingredient per ha (HortScience 53(11):1689).</summary>
    public const double MesotrioneGramsPerHectare = 560.0;

    /// <summary>Most in one year: as entered from the label; for mesotrione the published figure where none was entered; null where neither is known.</summary>
    public static ProductRate? Maximum(HerbicideLabel label)
    {
        ArgumentNullException.ThrowIfNull(label);
        if (label.MaximumPerYear is { } entered)
        {
            return entered;
        }

        return Actives.Is(label.ActiveIngredient, Actives.Mesotrione) && Strength(label) is { } strength
            ? LabelRate.ProductFor(MassPerArea.FromGramsPerSquareMeter(MesotrioneGramsPerHectare / 1.0e4), strength)
            : null;
    }

    /// <summary>Strength as entered; the usual 4 lb/gal for liquid mesotrione where none was; null where it is not known.</summary>
    internal static ProductStrength? Strength(HerbicideLabel label) => label.Strength
        ?? (label.Rate.Measure == ProductMeasure.Volume && Actives.Is(label.ActiveIngredient, Actives.Mesotrione) ? ProductStrength.PerLiter(LabelRate.StrengthFromPoundsPerGallon(4.0)) : null);

    /// <summary>
    /// Already applied this year: the entered figure, or the sum of the past sprays of the same active ingredient where that is more.
    /// A past spray of the other measure is not among them, see <see cref="OtherMeasure"/>.
    /// </summary>
    public static ProductRate Applied(HerbicideLabel label, IReadOnlyList<PastSpray> past, int year)
    {
        ArgumentNullException.ThrowIfNull(label);
        ArgumentNullException.ThrowIfNull(past);
        var noted = Same(label, past, year).Where(p => p.Rate is { } rate && rate.Measure == label.Rate.Measure).Sum(p => p.Rate!.Value.PerSquareMeter);
        return ProductRate.Of(label.Rate.Measure, Math.Max(noted, label.AppliedThisYear?.PerSquareMeter ?? 0.0));
    }

    /// <summary>Past sprays of the year that cannot be put as this product: a liquid beside a weighed label, or the other way round.</summary>
    internal static IReadOnlyList<PastSpray> OtherMeasure(HerbicideLabel label, IReadOnlyList<PastSpray> past, int year) =>
        [.. Same(label, past, year).Where(p => p.Rate is { IsNothing: false } rate && rate.Measure != label.Rate.Measure)];

    /// <summary>True when the applications together stay at or below the maximum, within a part in a million.</summary>
    public static bool Fits(ProductRate maximum, params ReadOnlySpan<ProductRate> applications)
    {
        var sum = ProductRate.Nothing(maximum.Measure);
        foreach (var application in applications)
        {
            sum += application;
        }

        return sum <= maximum * (1.0 + 1.0e-6);
    }

    private static IEnumerable<PastSpray> Same(HerbicideLabel label, IReadOnlyList<PastSpray> past, int year) =>
        past.Where(p => p.Date.Year == year && Actives.Is(p.ActiveIngredient, label.ActiveIngredient));
}
