namespace Seedfall.Engine.Workings;

/// <summary>What a figure measures; decides the units it is shown in. The canonical unit is in brackets.</summary>
public enum QuantityKind
{
    /// <summary>A pure number [-].</summary>
    Number,

    /// <summary>A whole count of things [-].</summary>
    Count,

    /// <summary>A share shown in percent [0 to 1].</summary>
    Share,

    /// <summary>A chance shown in percent, never finer than whole percents [0 to 1].</summary>
    Chance,

    /// <summary>Distance or height [m].</summary>
    Length,

    /// <summary>Depth of water or soil [mm].</summary>
    Depth,

    /// <summary>Ground area [m2].</summary>
    Area,

    /// <summary>Mass [kg].</summary>
    Mass,

    /// <summary>Volume of water or bulk material [L].</summary>
    Volume,

    /// <summary>Small liquid measure of a concentrate [L], shown in fl oz and mL.</summary>
    Dose,

    /// <summary>Small dry product weighed out [kg], shown in ounces by weight and grams.</summary>
    DryDose,

    /// <summary>Bulk volume of compost or peat [L], shown in cu yd and m3.</summary>
    BulkVolume,

    /// <summary>Volume flow [L/min].</summary>
    FlowRate,

    /// <summary>Precipitation rate [mm/h].</summary>
    PrecipitationRate,

    /// <summary>Dry material per area [kg/m2], shown per 1,000 sq ft and per 100 m2.</summary>
    MassPerArea,

    /// <summary>Liquid per area [L/m2], shown per 1,000 sq ft and per 100 m2.</summary>
    VolumePerArea,

    /// <summary>Label rate of a concentrate per area [L/m2], shown per acre and per hectare.</summary>
    LabelRate,

    /// <summary>Label rate of a dry product per area [kg/m2], shown in ounces by weight or pounds per acre, grams or kilograms per hectare.</summary>
    DryLabelRate,

    /// <summary>Water or spray per area [L/m2], shown in gallons per acre and liters per hectare.</summary>
    CarrierRate,

    /// <summary>Pressure [kPa], shown in psi and kPa.</summary>
    Pressure,

    /// <summary>Length of time [s].</summary>
    Seconds,

    /// <summary>Seeds or plants per area [1/m2], shown per square inch and per dm2.</summary>
    CountPerArea,

    /// <summary>Temperature [degC].</summary>
    Temperature,

    /// <summary>Difference between two temperatures [degC].</summary>
    TemperatureDifference,

    /// <summary>Speed [m/s].</summary>
    Speed,

    /// <summary>Length of time [min].</summary>
    Minutes,

    /// <summary>Length of time [d].</summary>
    Days,

    /// <summary>Money in the lawn's currency [-].</summary>
    Money,

    /// <summary>A calendar date, as days since 0001-01-01 (DateOnly.DayNumber).</summary>
    Date,
}
