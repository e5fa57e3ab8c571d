using System.Runtime.Intrinsics;
using Seedfall.Engine.Numerics;
using Seedfall.Engine.Simulation.Heat;
using Seedfall.Engine.Weather;
using Lanes = System.Runtime.Intrinsics.Vector256<double>;

namespace Seedfall.Engine.Simulation.Forcing;

/// <summary><see cref="ColumnRun"/> for reference ground, four seasons at a time.</summary>
internal static class ReferenceSoil
{
    /// <summary>Daily mean at 5 cm of four seasons, degC, run-up included.</summary>
    /// <param name="season">The hours.</param>
    /// <param name="days">Their days, one array per lane.</param>
    /// <param name="climate">The usual year.</param>
    /// <param name="parameters">The column's numbers.</param>
    internal static Lanes[] DailyMeanC(SeasonLanes season, IReadOnlyList<WeatherDay[]> days, PlaceClimate climate, HeatParameters parameters)
    {
        var site = SoilTempSite.Reference;
        var soil = new SoilThermal(site.Sand, site.Clay, site.OrganicMatter);
        var columns = new HeatLanes(parameters, soil, season.PressureKPa);
        columns.Start(climate, season.StartRad);
        var ground = new ReferenceGround(parameters, climate);
        var upper = new Lanes[HeatColumn.RootLayers];
        var means = new Lanes[season.Hours.Length / 24];
        for (var d = 0; d < means.Length; d++)
        {
            var surface = ground.Next(days, d);
            Array.Fill(upper, Vector256.Create(soil.WiltingPoint) + (ground.Filled * (soil.FieldCapacity - soil.WiltingPoint)));
            columns.SetMoisture(upper);
            var (sum, lost) = (Lanes.Zero, Lanes.Zero);
            for (var h = 24 * d; h < 24 * (d + 1); h++)
            {
                var before = columns.At5CmC;
                lost += columns.Step(season.Hours[h].Weather, surface);
                sum += 0.5 * (before + columns.At5CmC);
            }

            means[d] = sum * (1.0 / 24.0);
            ground.Lose(days, d, lost);
        }

        return means;
    }

    /// <summary>Water and snow of reference ground at four places of the same climate.</summary>
    private sealed class ReferenceGround
    {
        private readonly HeatParameters _parameters;
        private readonly double _bare;
        private readonly RootZoneWater[] _water = new RootZoneWater[LaneMath.Width];
        private readonly SnowStore[] _snow = new SnowStore[LaneMath.Width];

        internal ReferenceGround(HeatParameters parameters, PlaceClimate climate)
        {
            (_parameters, _bare) = (parameters, ColumnRun.BareShare(SoilTempSite.Reference, climate, parameters));
            Array.Fill(_water, new RootZoneWater(parameters.RootWaterMm, ColumnRun.StartFilled));
        }

        internal Lanes Filled => LaneMath.Gather(lane => _water[lane].Filled, 0, LaneMath.Width);

        internal GroundLanes Next(IReadOnlyList<WeatherDay[]> days, int d)
        {
            var each = new GroundSurface[LaneMath.Width];
            for (var lane = 0; lane < each.Length; lane++)
            {
                var day = days[Math.Min(lane, days.Count - 1)][d];
                _snow[lane].Next(day.AverageC, day.RainMm);
                each[lane] = ColumnRun.Ground(SoilTempSite.Reference, _bare, _parameters, _water[lane], _snow[lane]);
            }

            return new GroundLanes
            {
                CanopyShare = each[0].CanopyShare,
                ShadeShare = each[0].ShadeShare,
                WaterSupply = LaneMath.Gather(lane => each[lane].WaterSupply, 0, LaneMath.Width),
                SoilResistanceSM = LaneMath.Gather(lane => each[lane].SoilResistanceSm, 0, LaneMath.Width),
                SoilAlbedo = LaneMath.Gather(lane => each[lane].SoilAlbedo, 0, LaneMath.Width),
                CoverResistanceM2KW = LaneMath.Gather(lane => each[lane].CoverResistanceM2KW, 0, LaneMath.Width),
                SnowShare = LaneMath.Gather(lane => each[lane].SnowShare, 0, LaneMath.Width),
            };
        }

        internal void Lose(IReadOnlyList<WeatherDay[]> days, int d, Lanes lostMm)
        {
            for (var lane = 0; lane < _water.Length; lane++)
            {
                _water[lane].Next(days[Math.Min(lane, days.Count - 1)][d].RainMm, lostMm.GetElement(lane));
            }
        }
    }
}
