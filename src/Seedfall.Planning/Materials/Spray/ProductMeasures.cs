using System.Globalization;
using Seedfall.Engine.Units;
using Seedfall.Engine.Workings;

namespace Seedfall.Planning.Materials;

/// <summary>Kinds, units and words of each measure, so that one formula serves both.</summary>
internal static class ProductMeasures
{
    /// <summary>Kind of a figure that is a label rate.</summary>
    internal static QuantityKind RateKind(this ProductMeasure measure) => measure == ProductMeasure.Volume ? QuantityKind.LabelRate : QuantityKind.DryLabelRate;

    /// <summary>Kind of a figure that is product measured out.</summary>
    internal static QuantityKind DoseKind(this ProductMeasure measure) => measure == ProductMeasure.Volume ? QuantityKind.Dose : QuantityKind.DryDose;

    /// <summary>The usual unit of a label rate.</summary>
    internal static string PerAcreUnit(this ProductMeasure measure) => measure == ProductMeasure.Volume ? "fl oz per acre" : "dry oz per acre";

    /// <summary>The rate in fl oz or oz per acre.</summary>
    internal static double PerAcre(this ProductRate rate) => rate.Volume?.FluidOuncesPerAcre ?? Mass.FromPounds(rate.Weight!.Value.PoundsPerAcre).Ounces;

    /// <summary>The rate as words, for example <c>5 fl oz per acre</c> or <c>24 dry oz (1.5 lb) per acre</c>.</summary>
    internal static string Words(this ProductRate rate) => rate.Weight is { PoundsPerAcre: >= 1.0 } weight
        ? string.Create(CultureInfo.InvariantCulture, $"{rate.PerAcre():0.##} dry oz ({weight.PoundsPerAcre:0.##} lb) per acre")
        : string.Create(CultureInfo.InvariantCulture, $"{rate.PerAcre():0.##} {rate.Measure.PerAcreUnit()}");

    /// <summary>The rate as an input of a working.</summary>
    internal static WorkingInput Input(this ProductRate rate, string symbol, string meaning) => new(symbol, meaning, rate.PerAcre(), rate.Measure.PerAcreUnit());

    /// <summary>The rate a figure of kind <see cref="RateKind"/> stands for.</summary>
    internal static ProductRate RateOf(this Figure figure) => figure.Kind switch
    {
        QuantityKind.LabelRate => new VolumePerArea(figure.Value),
        QuantityKind.DryLabelRate => new MassPerArea(figure.Value),
        _ => throw new ArgumentOutOfRangeException(nameof(figure), figure.Kind, "a label rate is needed"),
    };

    /// <summary>True for powders and granules, which are weighed.</summary>
    internal static bool IsDry(this FormulationClass formulation) =>
        formulation is FormulationClass.WettablePowder or FormulationClass.DryFlowable or FormulationClass.SolublePowder;
}
