namespace Seedfall.Engine.Simulation.Heat;

/// <summary>The parameters as a vector, with the bounds physics allows each; the fit may not leave them.</summary>
public static class HeatParameterBounds
{
    /// <summary>Name, lowest and highest of each number, in the order of <see cref="ToVector"/>.</summary>
    public static IReadOnlyList<(string Name, double Low, double High)> All { get; } =
    [
        (nameof(HeatParameters.CanopyConductanceWm2K), 2.0, 25.0),
        (nameof(HeatParameters.SunThrough), 0.0, 0.30),
        (nameof(HeatParameters.LeastResistanceSm), 30.0, 300.0),
        (nameof(HeatParameters.Albedo), 0.16, 0.27),
        (nameof(HeatParameters.DayWind), 0.5, 2.0),
        (nameof(HeatParameters.NightWind), 0.5, 2.0),
        (nameof(HeatParameters.AerodynamicResistance), 120.0, 350.0),
        (nameof(HeatParameters.Inertia), 0.8, 1.25),
        (nameof(HeatParameters.StressRange), 0.2, 1.0),
        (nameof(HeatParameters.CloudFactor), 0.6, 1.2),
        (nameof(HeatParameters.SkyOffset), -0.05, 0.05),
        (nameof(HeatParameters.RootWaterMm), 30.0, 200.0),
        (nameof(HeatParameters.DryBareness), 0.0, 0.7),
    ];

    /// <summary>The parameters in order.</summary>
    public static double[] ToVector(HeatParameters p) =>
    [
        p.CanopyConductanceWm2K, p.SunThrough, p.LeastResistanceSm, p.Albedo, p.DayWind, p.NightWind,
        p.AerodynamicResistance, p.Inertia, p.StressRange, p.CloudFactor, p.SkyOffset, p.RootWaterMm,
        p.DryBareness,
    ];

    /// <summary>Parameters from a vector, each held inside its bounds; throws on another length.</summary>
    public static HeatParameters FromVector(ReadOnlySpan<double> vector)
    {
        if (vector.Length != All.Count)
        {
            throw new ArgumentException($"{All.Count} numbers are needed, got {vector.Length}", nameof(vector));
        }

        var held = new double[vector.Length];
        for (var i = 0; i < held.Length; i++)
        {
            held[i] = Math.Clamp(vector[i], All[i].Low, All[i].High);
        }

        return new HeatParameters
        {
            CanopyConductanceWm2K = held[0],
            SunThrough = held[1],
            LeastResistanceSm = held[2],
            Albedo = held[3],
            DayWind = held[4],
            NightWind = held[5],
            AerodynamicResistance = held[6],
            Inertia = held[7],
            StressRange = held[8],
            CloudFactor = held[9],
            SkyOffset = held[10],
            RootWaterMm = held[11],
            DryBareness = held[12],
        };
    }
}
