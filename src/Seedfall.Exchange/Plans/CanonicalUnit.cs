using Seedfall.Engine.Workings;

namespace Seedfall.Exchange.Plans;

/// <summary>The unit a figure's value is in, by its kind.</summary>
public static class CanonicalUnit
{
    /// <summary>Unit text; empty for pure numbers; the currency for money.</summary>
    public static string Of(QuantityKind kind, string currency) => kind switch
    {
        QuantityKind.Number or QuantityKind.Count => "",
        QuantityKind.Share or QuantityKind.Chance => "of 1",
        QuantityKind.Length => "m",
        QuantityKind.Depth => "mm",
        QuantityKind.Area => "m2",
        QuantityKind.Mass or QuantityKind.DryDose => "kg",
        QuantityKind.Volume or QuantityKind.Dose or QuantityKind.BulkVolume => "L",
        QuantityKind.FlowRate => "L/min",
        QuantityKind.PrecipitationRate => "mm/h",
        QuantityKind.MassPerArea or QuantityKind.DryLabelRate => "kg/m2",
        QuantityKind.VolumePerArea or QuantityKind.LabelRate or QuantityKind.CarrierRate => "L/m2",
        QuantityKind.CountPerArea => "1/m2",
        QuantityKind.Temperature or QuantityKind.TemperatureDifference => "degC",
        QuantityKind.Speed => "m/s",
        QuantityKind.Minutes => "min",
        QuantityKind.Seconds => "s",
        QuantityKind.Pressure => "kPa",
        QuantityKind.Days => "d",
        QuantityKind.Money => currency,
        QuantityKind.Date => "days since 0001-01-01",
        _ => throw new ArgumentOutOfRangeException(nameof(kind), kind, "is not a kind of quantity"),
    };
}
