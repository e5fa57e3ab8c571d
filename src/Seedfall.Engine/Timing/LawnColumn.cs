using Seedfall.Engine.Soil;

namespace Seedfall.Engine.Timing;

/// <summary>The soil under a lawn as conduction layers of one texture at field capacity.</summary>
internal sealed class LawnColumn
{
    private const int StepsPerDay = 4;
    private const double StepS = 86400.0 / StepsPerDay;
    private const double OrganicShare = 0.02;
    private const double AnnualS = 365.25 * 86400.0;

    /// <summary>Days from the coldest day of the year (mid January in the north) to the calendar year's start, as a phase.</summary>
    private const double ColdestDayNorth = 20.0;

    /// <summary>Shortest run of days whose mean and swing say something of the year.</summary>
    private const int ADayShortOfAYear = 364;

    private readonly double[] _thicknessM = [.. HeatConduction.StandardThicknessM];
    private readonly double[] _storageJm2K;
    private readonly double[] _conductanceWm2K;
    private readonly double[] _temperatureC;
    private readonly double[] _work;
    private readonly double _conductivityWmK;

    internal LawnColumn(SoilTexture texture, ReadOnlySpan<SurfaceForcing> surface, int firstDayOfYear, double latitudeDeg)
    {
        var typical = TextureTable.For(texture);
        var (porosity, water) = (typical.Hydraulics.Saturation, typical.Hydraulics.FieldCapacity);
        var capacityJm3K = ThermalProperties.HeatCapacityJm3K(porosity, water, OrganicShare);
        var grain = texture is SoilTexture.Sand or SoilTexture.LoamySand or SoilTexture.SandyLoam ? ThermalGrain.Sandy : ThermalGrain.Fine;
        _conductivityWmK = ThermalProperties.CoteKonradWmK(porosity, water, typical.Quartz.Value, grain);
        var layers = _thicknessM.Length;
        _storageJm2K = [.. _thicknessM.Select(thickness => thickness * capacityJm3K)];
        _conductanceWm2K = new double[layers];
        var conductivity = new double[layers];
        Array.Fill(conductivity, _conductivityWmK);
        HeatConduction.Conductances(_thicknessM, conductivity, _conductanceWm2K);
        _work = new double[HeatConduction.WorkLength(layers)];
        _temperatureC = StartProfile(surface, firstDayOfYear, latitudeDeg, ThermalProperties.DampingDepthM(_conductivityWmK, capacityJm3K, AnnualS));
    }

    /// <summary>Runs one day and gives its mean at a depth, degC.</summary>
    internal double DayMeanC(SurfaceForcing surface, double depthM)
    {
        var outerWm2K = HeatConduction.OuterConductanceWm2K(surface.ConductanceWm2K, _thicknessM[0], _conductivityWmK);
        var sum = 0.0;
        for (var step = 0; step < StepsPerDay; step++)
        {
            HeatConduction.Step(_temperatureC, _storageJm2K, _conductanceWm2K, surface.OuterC, outerWm2K, 0.0, StepS, 1.0, _work);
            sum += HeatConduction.AtDepthC(_temperatureC, _thicknessM, depthM);
        }

        return sum / StepsPerDay;
    }

    /// <summary>
    /// The annual wave T = mean + swing e^(-z/D) cos(t - z/D) where a year of surface is known, else the first days' mean throughout.
    /// </summary>
    private double[] StartProfile(ReadOnlySpan<SurfaceForcing> surface, int firstDayOfYear, double latitudeDeg, double dampingM)
    {
        var profile = new double[_thicknessM.Length];
        if (surface.Length < ADayShortOfAYear)
        {
            Array.Fill(profile, MeanOf(surface[..Math.Min(10, surface.Length)]));
            return profile;
        }

        var meanC = MeanOf(surface[..ADayShortOfAYear]);
        var coldest = latitudeDeg >= 0.0 ? ColdestDayNorth : ColdestDayNorth + 182.6;
        var swingC = SwingOf(surface[..ADayShortOfAYear], firstDayOfYear, coldest);
        var centerM = 0.0;
        for (var i = 0; i < profile.Length; i++)
        {
            centerM += 0.5 * _thicknessM[i];
            var phase = (2.0 * Math.PI * (firstDayOfYear - coldest) / 365.25) - (centerM / dampingM);
            profile[i] = meanC - (swingC * Math.Exp(-centerM / dampingM) * Math.Cos(phase));
            centerM += 0.5 * _thicknessM[i];
        }

        return profile;
    }

    private static double MeanOf(ReadOnlySpan<SurfaceForcing> surface)
    {
        var sum = 0.0;
        foreach (var day in surface)
        {
            sum += day.OuterC;
        }

        return sum / surface.Length;
    }

    private static double SwingOf(ReadOnlySpan<SurfaceForcing> surface, int firstDayOfYear, double coldest)
    {
        var sum = 0.0;
        for (var i = 0; i < surface.Length; i++)
        {
            sum -= surface[i].OuterC * Math.Cos(2.0 * Math.PI * (firstDayOfYear + i - coldest) / 365.25);
        }

        return 2.0 * sum / surface.Length;
    }
}
