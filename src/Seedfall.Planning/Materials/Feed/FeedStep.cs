namespace Seedfall.Planning.Materials;

/// <summary>One feeding as wanted, before any rule is put to it.</summary>
/// <param name="Id">Id of the feeding.</param>
/// <param name="Product">What goes on.</param>
/// <param name="Entered">True when the user entered the product.</param>
/// <param name="Date">Day of application.</param>
/// <param name="DaysAfter">Days after seed-down; null for a date of the season.</param>
/// <param name="WantedPoundsPerM">Usual nitrogen, lb per 1,000 sq ft.</param>
internal sealed record FeedStep(string Id, string Title, FertilizerProduct Product, bool Entered, DateOnly Date, int? DaysAfter, double WantedPoundsPerM, string Why, string WhySource)
{
    /// <summary>Nitrogen the user asks for, lb per 1,000 sq ft; null where no rate was entered.</summary>
    internal double? AskedPoundsPerM => Entered && Product.Rate is { } rate ? FertilizerGrade.NutrientIn(rate, Product.Nitrogen).PoundsPerThousandSquareFeet : null;

    internal double SlowShare => Product.SlowNitrogen?.Value ?? 0.0;
}
