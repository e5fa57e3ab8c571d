namespace Seedfall.Engine.Workings;

/// <summary>The two systems every figure is shown in.</summary>
public enum UnitSystem
{
    /// <summary>US customary, as lawn work in the United States is reckoned.</summary>
    UsCustomary,

    /// <summary>Metric.</summary>
    Metric,
}
