using Seedfall.Engine.Soil;

namespace Seedfall.Checks.Published.Soil;

/// <summary>
/// Thermal conductivity and heat capacity: recomputed from the published equations, whose constants are partly from memory
/// (common practice). Computed values guard the code; they are not outside evidence.
/// </summary>
public sealed class ThermalPropertyChecks
{
    [Fact]
    public void CoteKonradLoam()
    {
        Assert.Equal(0.21041, ThermalProperties.CoteKonradWmK(0.46, 0.0, 0.4, ThermalGrain.Fine), 5e-5);
        Assert.Equal(1.53094, ThermalProperties.SaturatedWmK(0.46, 0.4), 5e-4);
        Assert.Equal(1.12610, ThermalProperties.CoteKonradWmK(0.46, 0.25, 0.4, ThermalGrain.Fine), 5e-4);
    }

    [Fact]
    public void Johansen()
    {
        Assert.Equal(0.18462, ThermalProperties.JohansenDryWmK(1400), 5e-5);
        Assert.Equal(0.69897, ThermalProperties.JohansenKersten(0.5, coarse: false), 5e-5);
        Assert.Equal(0.78928, ThermalProperties.JohansenKersten(0.5, coarse: true), 5e-5);
    }

    [Fact]
    public void Campbell()
    {
        Assert.Equal(1.10489, ThermalProperties.CampbellWmK(1.4, 0.25, 0.2), 5e-5);
        Assert.Equal(0.22600, ThermalProperties.CampbellWmK(1.4, 0.0, 0.2), 5e-5);
    }

    [Fact]
    public void LuLoam()
    {
        Assert.Equal(1.25515, ThermalProperties.LuWmK(0.46, 0.25, 0.4, sandy: true), 5e-5);
        Assert.Equal(1.25280, ThermalProperties.LuWmK(0.46, 0.25, 0.4, sandy: false), 5e-5);
    }

    [Fact]
    public void HeatCapacity() => Assert.Equal(2.125e6, ThermalProperties.HeatCapacityJm3K(0.46, 0.25), 1e3);

    // Closed forms, exact: sqrt(k P / pi).
    [Fact]
    public void DampingDepths()
    {
        Assert.Equal(0.11726, ThermalProperties.DampingDepthM(5e-7, 1, 86400), 1e-5);
        Assert.Equal(2.2411, ThermalProperties.DampingDepthM(5e-7, 1, 365.25 * 86400), 1e-3);
        Assert.Equal(0.65286, Math.Exp(-0.05 / ThermalProperties.DampingDepthM(5e-7, 1, 86400)), 1e-5);
        Assert.Equal(0.57668, Math.Exp(-0.05 / ThermalProperties.DampingDepthM(3e-7, 1, 86400)), 1e-5);
        Assert.Equal(0.69742, Math.Exp(-0.05 / ThermalProperties.DampingDepthM(7e-7, 1, 86400)), 1e-5);
    }

    [Fact]
    public void ConductivityGrowsWithWaterInEveryFormula()
    {
        foreach (var row in TextureTable.All)
        {
            var (porosity, clay, quartz) = (row.Hydraulics.Saturation, row.Clay.Value, row.Quartz.Value);
            double[] waters = [row.Hydraulics.WiltingPoint, row.Hydraulics.FieldCapacity, porosity];
            foreach (var formula in new Func<double, double>[]
            {
                w => ThermalProperties.CoteKonradWmK(porosity, w, quartz, ThermalGrain.Fine),
                w => ThermalProperties.JohansenWmK(porosity, w, quartz, 1000 * row.Hydraulics.BulkDensityMgM3, coarse: false),
                w => ThermalProperties.LuWmK(porosity, w, quartz, sandy: false),
                w => ThermalProperties.CampbellWmK(row.Hydraulics.BulkDensityMgM3, w, clay),
            })
            {
                var values = waters.Select(formula).ToArray();
                Assert.True(values[0] < values[1] && values[1] < values[2], $"{row.Texture}: {string.Join(", ", values)}");
                Assert.InRange(values[2], 1.0, 2.6);
            }
        }
    }
}
